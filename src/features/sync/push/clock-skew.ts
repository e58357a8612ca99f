import { clockSkewSeconds, MOST_CLOCK_SKEW_SECONDS, skewInWords } from '../../../platform/clock/device-time.js';

/** What an integer column holds; a clock that is 68 years off is as wrong as one that is 100 years off. */
const MOST_SECONDS = 2_147_483_647;

/** The phone's clock less the service's, in whole seconds; null when the phone did not say its time. */
export function wholeSkewSeconds(sentAt: string | null | undefined, receivedAt: Date): number | null {
  const skew = clockSkewSeconds(sentAt, receivedAt);
  return skew === null ? null : Math.max(-MOST_SECONDS, Math.min(MOST_SECONDS, Math.round(skew)));
}

export function skewWarning(skew: number | null): string[] {
  if (skew === null || Math.abs(skew) <= MOST_CLOCK_SKEW_SECONDS) return [];
  return [`The phone's clock is ${skewInWords(skew)} ${skew > 0 ? 'ahead' : 'behind'}. Times taken down with it may be wrong by that; set the clock, and check the hours.`];
}
