import { minorUnits } from '../../domain/money/index.js';
import { canDraw } from './fonts.js';

/** Numbers, money and dates in one company's own form. All input is exact decimal text or a plain date. */
export interface DocumentFormat {
  /** "$1,394.00": where an amount stands alone. */
  money(amount: string): string;
  /** "1,394.00": the same digits without the sign, for columns that name the currency once. */
  amount(amount: string): string;
  /** "1,250.5": grouped, with no more decimals than the value has. */
  quantity(value: string): string;
  /** "6.25%" for "6.25". */
  percent(value: string): string;
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
  // Some locales have figures of their own, which the font can't draw: an amount would come out as replacement marks.
  const plain = { numberingSystem: 'latn', maximumFractionDigits: 6 };
  const exact = { ...plain, minimumFractionDigits: digits, maximumFractionDigits: Math.max(digits, 6) };
  const money = new Intl.NumberFormat(locale, { style: 'currency', currency, currencyDisplay: currencyDisplay(locale, currency), ...exact });
  const amount = new Intl.NumberFormat(locale, exact);
  const quantity = new Intl.NumberFormat(locale, plain);
  const percent = new Intl.NumberFormat(locale, { style: 'unit', unit: 'percent', ...plain });
  const date = new Intl.DateTimeFormat(english(locale), { dateStyle: 'long', timeZone: 'UTC', calendar: 'gregory', numberingSystem: 'latn' });
  return {
    money: (value) => money.format(exactly(value)),
    amount: (value) => amount.format(exactly(value)),
    quantity: (value) => quantity.format(exactly(value)),
    percent: (value) => percent.format(exactly(value)),
    // A plain date has no zone: read and printed in the same one, it stays the day it is.
    date: (localDate) => date.format(new Date(`${localDate}T00:00:00Z`)),
  };
}

/** A month is a word, and the words of the documents are English; other languages lend the order day, month, year. */
function english(locale: string): string {
  return /^en\b/iu.test(locale) ? locale : 'en-GB';
}

/** The sign of the currency, or its ISO 4217 letters where the sign is of a script that the font lacks. */
function currencyDisplay(locale: string, currency: string): 'symbol' | 'code' {
  const sign = new Intl.NumberFormat(locale, { style: 'currency', currency }).formatToParts(0).find(({ type }) => type === 'currency')?.value ?? '';
  return Array.from(sign).every((each) => canDraw(each.codePointAt(0) ?? 0)) ? 'symbol' : 'code';
}

/** `Intl` formats decimal text digit by digit; turned into a number first, large amounts would lose their cents. */
function exactly(value: string): `${number}` {
  if (!/^-?\d+(\.\d+)?$/u.test(value)) throw new RangeError(`"${value}" is not a plain decimal number.`);
  return value as `${number}`;
}
