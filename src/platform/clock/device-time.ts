import { Temporal } from 'temporal-polyfill';

/** Past this, the instants that a device gives can't be trusted to the minute. */
export const MOST_CLOCK_SKEW_SECONDS = 120;

/** Not `new Date(text)`, which knows no leap second: a time that the field accepted would fail only in the database. */
export function toInstant(text: string): Date {
  return new Date(Temporal.Instant.from(text).epochMilliseconds);
}

/** The device's clock less the service's; null when the device did not tell its time. */
export function clockSkewSeconds(sentAt: string | null | undefined, receivedAt: Date): number | null {
  return sentAt ? (toInstant(sentAt).getTime() - receivedAt.getTime()) / 1_000 : null;
}
