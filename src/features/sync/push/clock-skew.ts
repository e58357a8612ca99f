import { Temporal } from 'temporal-polyfill';

const TOO_MUCH_SECONDS = 120;
/** What an integer column holds; a clock that is 68 years off is as wrong as one that is 100 years off. */
const MOST_SECONDS = 2_147_483_647;

/** The phone's clock less the service's, in whole seconds; null when the phone did not say its time. */
export function clockSkewSeconds(sentAt: string | null, receivedAt: Date): number | null {
  if (sentAt === null) return null;
  const seconds = Math.round((Temporal.Instant.from(sentAt).epochMilliseconds - receivedAt.getTime()) / 1000);
  return Math.max(-MOST_SECONDS, Math.min(MOST_SECONDS, seconds));
}

export function skewWarning(skew: number | null): string[] {
  if (skew === null || Math.abs(skew) <= TOO_MUCH_SECONDS) return [];
  return [`The phone's clock is ${Math.abs(skew)} seconds ${skew > 0 ? 'ahead' : 'behind'}. Times taken down with it may be wrong by that; set the clock, and check the hours.`];
}
