import { Temporal } from 'temporal-polyfill';

/** Not `new Date(text)`, which knows no leap second: a time that the field accepted would fail only in the database. */
export function toInstant(text: string): Date {
  return new Date(Temporal.Instant.from(text).epochMilliseconds);
}
