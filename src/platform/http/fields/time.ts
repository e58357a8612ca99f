import { Temporal } from 'temporal-polyfill';
import { isTimeZone } from '../../clock/clock.js';
import { Field, type FieldOptions } from './field.js';
import { toInstant } from '../../clock/device-time.js';

const DATE = /^\d{4}-\d{2}-\d{2}$/;
// Up to nine digits of a second: many a language writes an instant so, and a phone's person can't mend that.
const INSTANT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?(Z|[+-]\d{2}:\d{2})$/;
const FIRST_YEAR = 1900;
const LAST_YEAR = 2200;

function exists(parse: () => { year: number } | Date): boolean {
  try {
    const value = parse();
    const year = value instanceof Date ? value.getUTCFullYear() : value.year;
    return year >= FIRST_YEAR && year <= LAST_YEAR;
  } catch {
    return false;
  }
}

export function isLocalDate(value: unknown): value is string {
  return typeof value === 'string' && DATE.test(value) && exists(() => Temporal.PlainDate.from(value, { overflow: 'reject' }));
}

/** A calendar day, without a time and a zone. */
export function LocalDateField(options: FieldOptions): PropertyDecorator {
  return Field({ example: '2027-04-12', ...options }, { type: 'string', format: 'date' }, (value) =>
    isLocalDate(value) ? null : `must be a calendar day written as YYYY-MM-DD, from ${FIRST_YEAR} to ${LAST_YEAR}`,
  );
}

/** An instant with its offset (RFC 3339): a bare local time would be ambiguous when the clocks change. */
export function InstantField(options: FieldOptions): PropertyDecorator {
  return Field({ example: '2027-04-12T07:30:00-04:00', ...options }, { type: 'string', format: 'date-time' }, (value) =>
    typeof value === 'string' && INSTANT.test(value) && exists(() => toInstant(value))
      ? null
      : `must be an instant with its offset (RFC 3339), such as 2027-04-12T07:30:00-04:00, from ${FIRST_YEAR} to ${LAST_YEAR}, with at most nine digits of a second`,
  );
}

export function TimeZoneField(options: FieldOptions): PropertyDecorator {
  return Field({ example: 'America/Detroit', ...options }, { type: 'string' }, (value) =>
    typeof value === 'string' && value.length <= 64 && isTimeZone(value) ? null : 'must be an IANA time zone such as America/Detroit',
  );
}
