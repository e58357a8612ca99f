import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { saturatedDensity, WATER_KG_PER_M3 } from './phases.js';

export interface SedimentInput {
  readonly inPlaceM3: number;
  /** Water in percent of the dry solids, as it lies in the pond. */
  readonly waterPercent: number;
  /** The same after draining; null when it is hauled as dug. */
  readonly drainedWaterPercent: number | null;
  /** Specific gravity of the solids. */
  readonly gravity: number;
  /** How much more room it takes when dug, in percent of its volume in place. */
  readonly bulkingPercent: number;
}

export interface Stage {
  readonly volumeM3: number;
  readonly weightKg: number;
}

/** The same sediment at its stages: a volume without its stage is paid for wrongly. */
export interface SedimentStages {
  readonly inPlace: Stage;
  /** Dug: more room, the same weight. */
  readonly dug: Stage;
  /** Settled and drained, before it is loaded again; null when it is not drained. */
  readonly drained: Stage | null;
  readonly densityKgPerM3: number;
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * Weight and volume of sediment in place, dug (bulked) and drained. Draining shrinks it by (1 + w2 G) / (1 + w1 G), as
 * long as its pores stay full of water. Bulking is counted from the volume in place once, never on top of swell.
 * @throws DomainError at /waterPercent or /drainedWaterPercent (more than before draining)
 * @see phase relations in any soil-mechanics text (from memory); US Army ERDC, TR DOER-1, ch. 6: 10 to 40 % bulking
 */
export function sedimentStages({ inPlaceM3, waterPercent, drainedWaterPercent, gravity, bulkingPercent }: SedimentInput): SedimentStages {
  const { wetKgPerM3, dryKgPerM3 } = saturatedDensity(waterPercent, gravity);
  const inPlace = { volumeM3: inPlaceM3, weightKg: inPlaceM3 * wetKgPerM3 };
  const dug = { volumeM3: inPlaceM3 * (1 + bulkingPercent / 100), weightKg: inPlace.weightKg };
  const working: Working = {
    rule: 'wet density = water density × (1 + w) × G / (1 + w × G), w = water / dry solids by weight; dug volume = volume in place × (1 + bulking)',
    inputs: [
      given('volume in place', inPlaceM3, 'm3'),
      given('water content', waterPercent, '% of dry solids'),
      given('specific gravity of the solids', gravity),
      given('bulking', bulkingPercent, '% of the volume in place'),
    ],
    steps: [
      step('dry solids in place', `${WATER_KG_PER_M3} × ${gravity} / (1 + ${waterPercent / 100} × ${gravity})`, dryKgPerM3, 'kg/m3'),
      step('wet density', `dry solids × (1 + ${waterPercent / 100})`, wetKgPerM3, 'kg/m3'),
      step('weight', 'volume in place × wet density', inPlace.weightKg, 'kg'),
      step('dug volume', `volume in place × (1 + ${bulkingPercent} / 100)`, dug.volumeM3, 'm3'),
    ],
  };
  const drained = drainedWaterPercent === null ? null : drain(inPlaceM3, dryKgPerM3, waterPercent, drainedWaterPercent, gravity);
  if (drained !== null && drainedWaterPercent !== null) {
    working.inputs.push(given('water content after draining', drainedWaterPercent, '% of dry solids'));
    working.steps.push(
      step('drained volume', `volume in place × (1 + ${drainedWaterPercent / 100} × ${gravity}) / (1 + ${waterPercent / 100} × ${gravity})`, drained.volumeM3, 'm3'),
      step('drained weight', `volume in place × dry solids × (1 + ${drainedWaterPercent / 100})`, drained.weightKg, 'kg'),
    );
  }
  return { inPlace, dug, drained, densityKgPerM3: wetKgPerM3, working, warnings: warningsOf(waterPercent, drainedWaterPercent, bulkingPercent) };
}

function drain(inPlaceM3: number, dryKgPerM3: number, before: number, after: number, gravity: number): Stage {
  if (!(after > 0 && after <= before)) {
    throw DomainError.at('/drainedWaterPercent', 'Drained sediment holds some water, and no more than before; check which of the two contents is which.');
  }
  const share = (1 + (after / 100) * gravity) / (1 + (before / 100) * gravity);
  return { volumeM3: inPlaceM3 * share, weightKg: inPlaceM3 * dryKgPerM3 * (1 + after / 100) };
}

function warningsOf(before: number, after: number | null, bulking: number): string[] {
  const warnings: string[] = [];
  if (bulking < 10 || bulking > 40) warnings.push('Mechanically dug sediment usually bulks by 10 to 40 % (US Army ERDC); check the bulking.');
  if (before < 50 || before > 500) warnings.push('The water content lies outside the 50 to 500 % of dry solids that pond sediment usually has; it is water over solids, not over the whole.');
  if (after !== null && after < 40) warnings.push('Sediment this dry has begun to take up air: it shrinks less than the formula says, and the drained volume is a lower bound.');
  return warnings;
}
