import { Decimal } from '../decimal.js';
import { DomainError, within } from '../errors.js';
import { minorUnits, roundMoney } from './currency.js';

/** Money on the wire: a decimal string, never a number, so that no reader turns cents into binary fractions. */
export interface Money {
  readonly amount: string;
  readonly currency: string;
}

/** The largest amount, either sign, in the currency's major unit. */
export const MONEY_LIMIT = new Decimal('999999999999.99');

const PLAIN_NUMBER = /^-?\d{1,30}(\.\d{1,30})?$/;

/**
 * @throws DomainError at /currency (no such currency) or /amount (no plain decimal number, more decimals than the
 *   minor unit, or beyond {@link MONEY_LIMIT}).
 */
export function parseMoney(money: Money): Decimal {
  const digits = within('/currency', () => minorUnits(money.currency));
  if (typeof money.amount !== 'string' || !PLAIN_NUMBER.test(money.amount)) {
    throw DomainError.at('/amount', 'The amount must be a plain decimal number in a string, such as "1234.50".');
  }
  const amount = new Decimal(money.amount);
  requireMinorUnits(amount, digits, money.currency);
  requireWithinLimit(amount);
  // "-0.00" is a plain number too, and would print as a debt of nothing.
  return amount.isZero() ? new Decimal(0) : amount;
}

/**
 * An amount of whole minor units as money, with all its digits ("1234.50").
 * @throws DomainError at /amount when the amount was not rounded first (silently dropped cents would make a document
 *   whose lines do not add up) or is beyond {@link MONEY_LIMIT}.
 */
export function formatMoney(amount: Decimal, currency: string): Money {
  requireWithinLimit(amount);
  return formatSum(amount, currency);
}

/**
 * The same for a sum of amounts, which may exceed what one may be: a job with a mistyped bill must still be shown.
 * @throws DomainError at /amount when the amount was not rounded first
 */
export function formatSum(amount: Decimal, currency: string): Money {
  const digits = within('/currency', () => minorUnits(currency));
  requireMinorUnits(amount, digits, currency);
  return { amount: amount.isZero() ? new Decimal(0).toFixed(digits) : amount.toFixed(digits), currency };
}

/** {@link roundMoney}, then {@link formatMoney}: for figures that are kept unrounded until shown, such as labor cost. */
export function toMoney(amount: Decimal, currency: string): Money {
  return formatMoney(roundMoney(amount, currency), currency);
}

/** @throws DomainError (pointer "/amount") when |amount| is over {@link MONEY_LIMIT} or not finite. */
export function requireWithinLimit(amount: Decimal): void {
  if (amount.abs().lte(MONEY_LIMIT)) return;
  throw DomainError.at('/amount', `The amount must lie between -${MONEY_LIMIT.toFixed()} and ${MONEY_LIMIT.toFixed()}.`);
}

function requireMinorUnits(amount: Decimal, digits: number, currency: string): void {
  if (amount.decimalPlaces() <= digits) return;
  throw DomainError.at('/amount', `The amount may have at most ${digits} decimals in ${currency}.`);
}
