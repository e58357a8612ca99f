import { plain } from '../../decimal.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { SEA_LEVEL_MMHG } from './air-pressure.js';
import { requireWithin } from '../input-checks.js';

export interface OxygenSaturation {
  readonly saturationMgPerL: number;
  readonly working: Working;
  readonly warnings: string[];
}

/** The most oxygen that fresh water holds against moist air at one atmosphere, in mg/L. */
function atOneAtmosphere(kelvin: number): number {
  return Math.exp(-139.34411 + 1.575701e5 / kelvin - 6.642308e7 / kelvin ** 2 + 1.2438e10 / kelvin ** 3 - 8.621949e11 / kelvin ** 4);
}

/** The factor for another pressure: less air above, and the share of water vapor in it grows. */
function pressureFactor(celsius: number, atmospheres: number): number {
  const kelvin = celsius + 273.15;
  const vapor = Math.exp(11.8571 - 3840.7 / kelvin - 216961 / kelvin ** 2);
  const theta = 0.000975 - 1.426e-5 * celsius + 6.436e-8 * celsius ** 2;
  return (atmospheres * (1 - vapor / atmospheres) * (1 - theta * atmospheres)) / ((1 - vapor) * (1 - theta));
}

/**
 * Dissolved oxygen at saturation in fresh water.
 * @param celsius of the water, 0 to 40 °C
 * @param pressureMmHg of the air at the place (station pressure, not corrected to sea level), 400 to 820 mmHg
 * @throws DomainError at /temperature or /pressureMmHg
 * @see Benson & Krause 1984, as in Standard Methods 4500-O; the coefficients were read, the pressure term as several public programs have it
 */
export function oxygenSaturation(celsius: number, pressureMmHg: number): OxygenSaturation {
  requireWithin('/temperature', celsius, 0, 40, 'degC');
  requireWithin('/pressureMmHg', pressureMmHg, 400, 820, 'mmHg');
  const kelvin = celsius + 273.15;
  const base = atOneAtmosphere(kelvin);
  const factor = pressureFactor(celsius, pressureMmHg / SEA_LEVEL_MMHG);
  const saturationMgPerL = base * factor;
  const working: Working = {
    rule: 'ln C = −139.34411 + 1.575701e5/T − 6.642308e7/T² + 1.2438e10/T³ − 8.621949e11/T⁴ at one atmosphere, times the pressure factor P (1 − p/P)(1 − θP) / ((1 − p)(1 − θ))',
    inputs: [given('water temperature', celsius, 'degC'), given('air pressure at the place', pressureMmHg, 'mmHg')],
    steps: [
      step('T', `${plain(celsius)} + 273.15`, kelvin, 'K'),
      step('saturation at 760 mmHg', 'the formula at T', base, 'mg/L'),
      step('pressure factor', `at P = ${plain(pressureMmHg)} / 760 atm`, factor),
      step('saturation', `${plain(base)} × ${plain(factor)}`, saturationMgPerL, 'mg/L'),
    ],
  };
  const warnings = celsius > 35 ? ['Above 35 degC the published tables end (USGS QW 99.01); the formula is stated to 40 degC.'] : [];
  return { saturationMgPerL, working, warnings };
}

/**
 * What a reading of oxygen means for fish.
 * @param measuredMgPerL the lowest of the day, which is at dawn; 0 to 60 mg/L
 * @throws DomainError at /measuredMgPerL
 * @see University of Florida Extension, "Dissolved oxygen for fish production": 5 mg/L is recommended, most fish are distressed at 2 to 4, most die below 2
 */
export function oxygenCautions(measuredMgPerL: number, saturationMgPerL: number): string[] {
  requireWithin('/measuredMgPerL', measuredMgPerL, 0, 60, 'mg/L');
  const cautions: string[] = [];
  if (measuredMgPerL < 2) cautions.push('Below 2 mg/L most fish die: aerate at once.');
  else if (measuredMgPerL <= 4) cautions.push('At 2 to 4 mg/L most fish are distressed: aerate, and stop feeding.');
  else if (measuredMgPerL < 5) cautions.push('Below the 5 mg/L that fish should have: aerate.');
  if (measuredMgPerL > 1.1 * saturationMgPerL) cautions.push('More than 110 % of saturation: algae in sunlight, or a reading to repeat; expect a low at dawn.');
  return cautions;
}
