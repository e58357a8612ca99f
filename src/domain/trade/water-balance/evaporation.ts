import { plain } from '../../decimal.js';
import { DomainError, within } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { saturationPressurePa } from './saturation-pressure.js';

const PA_PER_INHG = 3386.389;
const FT_PER_MIN_PER_M_PER_S = 60 / 0.3048;
const KG_PER_LB = 0.45359237;
const M2_PER_FT2 = 0.09290304;
/** Water near 60 degF, 62.37 lb/ft3. */
const WATER_KG_PER_M3 = 999.07;
/** What undisturbed pools were measured at, against the equation. */
const UNDISTURBED = 0.74;
/** Indoor air moves no faster; beyond, the equation is stretched. m/s */
const INDOOR_AIR_M_PER_S = 0.3;

export interface EvaporationInput {
  /** m2, above 0 */
  readonly areaM2: number;
  /** 0 to 50 degC */
  readonly waterC: number;
  /** 0 to 50 degC */
  readonly airC: number;
  /** 0 to 100 */
  readonly relativeHumidityPercent: number;
  /** Over the water; m/s, 0 or more. */
  readonly windMPerS: number;
}

export interface Evaporation {
  readonly kgPerHour: number;
  readonly undisturbedKgPerHour: number;
  readonly m3PerDay: number;
  /** Of the water level; m. */
  readonly depthMPerDay: number;
  readonly warnings: string[];
  readonly working: Working;
}

/**
 * W [lb/h] = A [ft2] × (pw − pa) [inHg] × (95 + 0.425 V [ft/min]) / Y [Btu/lb], pw at the water, pa the vapor in the air,
 * Y = 1093.6 − 0.568 × water temperature [degF]. Undisturbed pools were measured at 0.74 of it. No evaporation where the
 * air holds more vapor than the water gives.
 * @throws DomainError at /area, /waterTemperature or /airTemperature
 * @see ASHRAE Transactions 104(1A), 1998, paper 4146
 */
export function evaporation({ areaM2, waterC, airC, relativeHumidityPercent, windMPerS }: EvaporationInput): Evaporation {
  if (!(areaM2 > 0)) throw DomainError.at('/area', 'The area must be more than 0.');
  const atWater = within('/waterTemperature', () => saturationPressurePa(waterC)) / PA_PER_INHG;
  const inAir = (within('/airTemperature', () => saturationPressurePa(airC)) / PA_PER_INHG) * (relativeHumidityPercent / 100);
  const latentHeat = 1093.6 - 0.568 * (waterC * 1.8 + 32);
  const areaFt2 = areaM2 / M2_PER_FT2;
  const ftPerMin = windMPerS * FT_PER_MIN_PER_M_PER_S;
  const lbPerHour = Math.max(0, (areaFt2 * (atWater - inAir) * (95 + 0.425 * ftPerMin)) / latentHeat);
  const kgPerHour = lbPerHour * KG_PER_LB;
  const m3PerDay = (kgPerHour * 24) / WATER_KG_PER_M3;
  const depthMPerDay = m3PerDay / areaM2;

  const warnings: string[] = [];
  if (inAir >= atWater) warnings.push('The air holds at least as much vapor as the water gives: nothing evaporates, dew may even form.');
  if (windMPerS > INDOOR_AIR_M_PER_S) warnings.push('The equation comes from indoor pools with little air movement; in wind it is a rough estimate. Waterfalls and fountains lose more by splash and drift.');
  const working: Working = {
    rule: 'W = A × (pw − pa) × (95 + 0.425 V) / Y',
    inputs: [given('area', areaFt2, 'ft2'), given('water temperature', waterC, 'degC'), given('air temperature', airC, 'degC'), given('relative humidity', relativeHumidityPercent, 'percent'), given('air speed', ftPerMin, 'ft/min')],
    steps: [
      step('pw, vapor pressure at the water', 'saturation pressure at the water temperature', atWater, 'inHg'),
      step('pa, vapor pressure in the air', `saturation pressure at the air temperature × ${plain(relativeHumidityPercent)} / 100`, inAir, 'inHg'),
      step('Y, heat to evaporate', '1093.6 − 0.568 × water temperature in degF', latentHeat, 'Btu/lb'),
      step('W', `${plain(areaFt2)} × (${plain(atWater)} − ${plain(inAir)}) × (95 + 0.425 × ${plain(ftPerMin)}) / ${plain(latentHeat)}, not below 0`, lbPerHour, 'lb/h'),
      step('a day', `${plain(kgPerHour)} kg/h × 24 / ${WATER_KG_PER_M3}`, m3PerDay, 'm3'),
      step('drop of the level a day', `${plain(m3PerDay)} / ${plain(areaM2)}`, depthMPerDay, 'm'),
    ],
  };
  return { kgPerHour, undisturbedKgPerHour: kgPerHour * UNDISTURBED, m3PerDay, depthMPerDay, warnings, working };
}
