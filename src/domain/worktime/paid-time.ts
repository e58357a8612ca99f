import { Decimal } from '../decimal.js';
import { DomainError } from '../errors.js';

export interface WorkedSpan {
  readonly startedAt: Date;
  readonly endedAt: Date;
  readonly unpaidBreakMinutes: number;
}

const MS_PER_MINUTE = 60_000;

/**
 * Minutes to be paid: elapsed between the two instants, less the unpaid break, unrounded. Taken from instants, so a
 * night on which the clocks change counts the hours really worked; no rounding of punches.
 * @throws DomainError at /startedAt, /endedAt or /unpaidBreakMinutes
 * @see US Department of Labor, FLSA Hours Worked Advisor, "Daylight Savings Time"
 */
export function paidMinutes({ startedAt, endedAt, unpaidBreakMinutes }: WorkedSpan): Decimal {
  if (Number.isNaN(startedAt.getTime())) throw DomainError.at('/startedAt', 'The start must be an instant.');
  if (!(endedAt.getTime() > startedAt.getTime())) {
    throw DomainError.at('/endedAt', 'The work must end after it started.');
  }
  const elapsed = new Decimal(endedAt.getTime() - startedAt.getTime()).div(MS_PER_MINUTE);
  if (!(unpaidBreakMinutes >= 0) || elapsed.lt(unpaidBreakMinutes)) {
    throw DomainError.at('/unpaidBreakMinutes', 'The unpaid break must be 0 or more and not longer than the work.');
  }
  return elapsed.minus(unpaidBreakMinutes);
}

/** Hours, unrounded. */
export function minutesToHours(minutes: Decimal): Decimal {
  return new Decimal(minutes).div(60);
}
