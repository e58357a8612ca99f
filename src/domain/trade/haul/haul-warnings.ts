import { convert } from '../../quantity/index.js';
import { CARRIERS } from './carriers.js';
import type { HaulInput } from './haul-input.js';

/**
 * Labor-hours for 1 yd3 of wet sediment in place by hand and barrow: what is usual, and beyond what a figure is doubted.
 * A judgement built on published hand digging and hand transport; no source gives it for pond sediment.
 */
export const SANITY_BAND = { usualFrom: 1.3, usualTo: 4, doubtBelow: 1, doubtAbove: 6 } as const;

/** Hand transport was published for ways up to this long, m. */
const PUBLISHED_TO_M = 50;

export function haulWarnings(input: HaulInput, hoursPerM3: number): string[] {
  const carrier = CARRIERS[input.carrier];
  const warnings: string[] = [];
  const slope = Math.abs(input.slopePercent);
  if (slope > carrier.steepPercent) {
    warnings.push(`Over ${carrier.steepPercent} % is steep for a ${input.carrier} (common practice): it may run away or tip over. Lay boards, take another way or a winch; the hours are a guess here.`);
  }
  if (carrier.byHand && input.distanceM > PUBLISHED_TO_M) warnings.push('Hand transport is published for ways up to 50 m; beyond it people tire, and a machine pays.');
  if (byHand(input)) {
    const perYd3 = hoursPerM3 * convert(1, 'yd3', 'm3');
    const { usualFrom, usualTo, doubtBelow, doubtAbove } = SANITY_BAND;
    if (perYd3 < doubtBelow || perYd3 > doubtAbove) warnings.push(`${perYd3.toFixed(2)} h per yd3 lies outside ${doubtBelow} to ${doubtAbove}: check what was entered before pricing from it.`);
    else if (perYd3 < usualFrom || perYd3 > usualTo) warnings.push(`${perYd3.toFixed(2)} h per yd3 lies outside the usual ${usualFrom} to ${usualTo} for wet sediment by hand and barrow.`);
  }
  return warnings;
}

/** Whether the band speaks of this way of working at all. */
export function byHand({ carrier, digging }: HaulInput): boolean {
  return CARRIERS[carrier].byHand && typeof digging === 'string';
}
