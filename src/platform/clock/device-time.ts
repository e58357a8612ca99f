import { Temporal } from 'temporal-polyfill';

/** Past this, the instants that a device gives can't be trusted to the minute. */
export const MOST_CLOCK_SKEW_SECONDS = 120;

/** Not `new Date(text)`, which knows no leap second: a time that the field accepted would fail only in the database. */
export function toInstant(text: string): Date {
  return new Date(Temporal.Instant.from(text).epochMilliseconds);
}

/** How far a clock is off, in the largest unit that still tells it: `240 s`, `95 minutes`, `26 hours`, `138 days`. */
export function skewInWords(seconds: number): string {
  const off = Math.abs(seconds);
  if (off < 600) return `${Math.round(off)} s`;
  if (off < 3 * 3_600) return `${Math.round(off / 60)} minutes`;
  if (off < 3 * 86_400) return `${Math.round(off / 3_600)} hours`;
  return `${Math.round(off / 86_400)} days`;
}

/** The device's clock less the service's; null when the device did not tell its time. */
export function clockSkewSeconds(sentAt: string | null | undefined, receivedAt: Date): number | null {
  return sentAt ? (toInstant(sentAt).getTime() - receivedAt.getTime()) / 1_000 : null;
}
