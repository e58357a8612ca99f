import { Decimal } from '../decimal.js';
import { DomainError } from '../errors.js';
import { MINOR_UNITS } from './iso-4217.js';

/**
 * The decimal digits of a currency's minor unit: USD 2, JPY 0, KWD 3.
 * @throws DomainError (pointer "") for a code that is no ISO 4217 currency.
 * @see ISO 4217
 */
export function minorUnits(currency: string): number {
  const digits = MINOR_UNITS.get(currency);
  if (digits !== undefined) return digits;
  throw DomainError.at('', `"${String(currency).slice(0, 20)}" is not an ISO 4217 currency; use a three-letter code such as USD.`);
}

/**
 * Rounded to the currency's minor unit, half up and away from zero: 2.345 is 2.35 and -2.345 is -2.35, so that a
 * credit note mirrors its invoice to the cent.
 */
export function roundMoney(amount: Decimal, currency: string): Decimal {
  return new Decimal(amount).toDecimalPlaces(minorUnits(currency), Decimal.ROUND_HALF_UP);
}
