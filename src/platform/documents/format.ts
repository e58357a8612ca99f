import { minorUnits } from '../../domain/money/index.js';

/** Numbers, money and dates in one company's own form. All input is exact decimal text or a plain date. */
export interface DocumentFormat {
  /** "$1,394.00": where an amount stands alone. */
  money(amount: string): string;
  /** "1,394.00": the same digits without the sign, for columns that name the currency once. */
  amount(amount: string): string;
  /** "1,250.5": grouped, with no more decimals than the value has. */
  quantity(value: string): string;
  /** "April 12, 2027" for "2027-04-12". */
  date(localDate: string): string;
}

/**
 * @param locale BCP 47
 * @param currency ISO 4217; its minor unit gives the decimals. `Intl` has display digits of its own (two for the
 *   Iraqi dinar's three, none for some that have two), which would hide part of an amount.
 * @throws RangeError for a malformed locale, DomainError for an unknown currency
 */
export function documentFormat(locale: string, currency: string): DocumentFormat {
  const digits = minorUnits(currency);
  const exact = { minimumFractionDigits: digits, maximumFractionDigits: Math.max(digits, 6) };
  const money = new Intl.NumberFormat(locale, { style: 'currency', currency, ...exact });
  const amount = new Intl.NumberFormat(locale, exact);
  const quantity = new Intl.NumberFormat(locale, { maximumFractionDigits: 6 });
  const date = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' });
  return {
    money: (value) => money.format(exactly(value)),
    amount: (value) => amount.format(exactly(value)),
    quantity: (value) => quantity.format(exactly(value)),
    // A plain date has no zone: read and printed in the same one, it stays the day it is.
    date: (localDate) => date.format(new Date(`${localDate}T00:00:00Z`)),
  };
}

/** `Intl` formats decimal text digit by digit; turned into a number first, large amounts would lose their cents. */
function exactly(value: string): `${number}` {
  if (!/^-?\d+(\.\d+)?$/u.test(value)) throw new RangeError(`"${value}" is not a plain decimal number.`);
  return value as `${number}`;
}
