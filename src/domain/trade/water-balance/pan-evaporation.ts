import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';

/** From a Class A pan to open water, over a year. */
export const PAN_COEFFICIENT = 0.7;

export interface PanEvaporation {
  readonly depthM: number;
  readonly volumeM3: number;
  readonly warnings: string[];
  readonly working: Working;
}

/**
 * Pond evaporation = coefficient × Class A pan evaporation, for the period of the pan figure.
 * @param areaM2 above 0
 * @param panM evaporation from the pan over the period; m, 0 or more
 * @param coefficient 0.7 over a year
 * @throws DomainError at /area or /panEvaporation
 * @see NOAA Technical Reports NWS 33 and 34
 */
export function panEvaporation(areaM2: number, panM: number, coefficient: number): PanEvaporation {
  if (!(areaM2 > 0)) throw DomainError.at('/area', 'The area must be more than 0.');
  if (!(panM >= 0)) throw DomainError.at('/panEvaporation', 'Pan evaporation must be 0 or more.');
  const depthM = coefficient * panM;
  const volumeM3 = depthM * areaM2;
  const warnings = ['The coefficient of 0.7 holds over a year; over a month it moves with the season, since deep water warms late and cools late.'];
  if (coefficient < 0.6 || coefficient > 0.85) warnings.push('A pan coefficient outside 0.6 to 0.85 is unusual (common practice); check it.');
  const working: Working = {
    rule: 'pond evaporation = pan coefficient × pan evaporation; volume = depth × area',
    inputs: [given('pan evaporation', panM, 'm'), given('pan coefficient', coefficient), given('area', areaM2, 'm2')],
    steps: [step('depth', `${plain(coefficient)} × ${plain(panM)}`, depthM, 'm'), step('volume', `${plain(depthM)} × ${plain(areaM2)}`, volumeM3, 'm3')],
  };
  return { depthM, volumeM3, warnings, working };
}
