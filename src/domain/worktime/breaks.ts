import { Decimal } from '../decimal.js';
import { DomainError, within } from '../errors.js';

/** A pause in work, taken down as it was. */
export interface Break {
  readonly startedAt: Date;
  readonly endedAt: Date;
  readonly paid: boolean;
}

/** A rest up to about this long is work, whatever was agreed. @see 29 CFR 785.18 */
export const SHORTEST_UNPAID_REST_MINUTES = 20;

const MS_PER_MINUTE = 60_000;

/** Whether a rest was taken down as unpaid that is too short for that. */
export function isShortRest({ startedAt, endedAt, paid }: Break): boolean {
  return !paid && endedAt.getTime() - startedAt.getTime() < SHORTEST_UNPAID_REST_MINUTES * MS_PER_MINUTE;
}

/**
 * Seconds of breaks that are not paid, exact to the millisecond. An unpaid rest under 20 minutes counts as work and is
 * left out; a meal of which somebody is completely relieved is ordinarily 30 minutes or more.
 * @see 29 CFR 785.18 (rest), 785.19 (meal)
 */
export function unpaidBreakSeconds(breaks: readonly Break[]): Decimal {
  return breaks
    .filter((pause) => !pause.paid && !isShortRest(pause))
    .reduce((sum, { startedAt, endedAt }) => sum.plus(new Decimal(endedAt.getTime() - startedAt.getTime()).div(1_000)), new Decimal(0));
}

/**
 * Breaks lie one after another within the work.
 * @param work its `endedAt` is null while it runs
 * @throws DomainError at /breaks/n/startedAt or /breaks/n/endedAt
 */
export function requireBreaksWithin(breaks: readonly Break[], work: { readonly startedAt: Date; readonly endedAt: Date | null }): void {
  let earliest = work.startedAt.getTime();
  for (const [index, pause] of breaks.entries()) {
    within(`/breaks/${index}`, () => {
      if (!(pause.startedAt.getTime() >= earliest)) throw DomainError.at('/startedAt', 'A break must start within the work, after the break before it.');
      if (!(pause.endedAt.getTime() > pause.startedAt.getTime())) throw DomainError.at('/endedAt', 'A break must end after it started.');
      if (work.endedAt !== null && pause.endedAt.getTime() > work.endedAt.getTime()) throw DomainError.at('/endedAt', 'A break must end before the work does.');
    });
    earliest = pause.endedAt.getTime();
  }
}
