import { DomainError } from '../../errors.js';

/** Fresh water, 62.4 lb/ft3. */
export const WATER_KG_PER_M3 = (62.4 * 0.45359237) / 0.028316846592;

export interface SedimentDensity {
  readonly wetKgPerM3: number;
  /** Dry solids in a volume of the sediment as it lies. */
  readonly dryKgPerM3: number;
}

/**
 * Density of sediment whose pores are full of water: wet = water × (1 + w) G / (1 + w G), dry = water × G / (1 + w G).
 * @param waterPercent weight of the water in percent of the dry solids, above 0; 50 to 500 in a pond
 * @param gravity of the solids, as a multiple of water; about 2.65 for mineral ones
 * @throws DomainError at /waterPercent
 * @see phase relations in any soil-mechanics text (from memory)
 */
export function saturatedDensity(waterPercent: number, gravity: number): SedimentDensity {
  if (!(waterPercent > 0)) throw DomainError.at('/waterPercent', 'The water content must be more than 0 % of the dry solids.');
  const w = waterPercent / 100;
  const dryKgPerM3 = (WATER_KG_PER_M3 * gravity) / (1 + w * gravity);
  return { dryKgPerM3, wetKgPerM3: dryKgPerM3 * (1 + w) };
}

/**
 * Density of organic lake mud from what a laboratory reports: 100 ρ / (100 + (W + IG)(ρ - 1)), ρ = 2.6.
 * @param waterPercentOfWet water in percent of the wet weight, 0 to 100
 * @param ignitionPercentOfWet loss on ignition in percent of the wet weight
 * @throws DomainError at /ignitionPercentOfWet when the two exceed 100 %
 * @see Håkanson & Jansson, Principles of Lake Sedimentology, 1983, 4.1.3 (formula from memory)
 */
export function organicMudDensity(waterPercentOfWet: number, ignitionPercentOfWet: number): number {
  if (waterPercentOfWet + ignitionPercentOfWet > 100) {
    throw DomainError.at('/ignitionPercentOfWet', 'Water and loss on ignition together are at most 100 % of the wet weight.');
  }
  return (WATER_KG_PER_M3 * 100 * 2.6) / (100 + (waterPercentOfWet + ignitionPercentOfWet) * 1.6);
}
