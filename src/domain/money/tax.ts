import { Decimal, sumDecimals } from '../decimal.js';
import { DomainError } from '../errors.js';
import { roundMoney } from './currency.js';

export interface TaxCategory {
  readonly code: string;
  readonly name: string;
  /** Percent: 6.25 is 6.25 %. From 0 to 100. */
  readonly rate: Decimal;
}

export interface TaxableLine {
  /** Code of the line's tax category; null is untaxed. */
  readonly category: string | null;
  /** Net amount, already rounded to the minor unit; credits are negative. */
  readonly amount: Decimal;
}

export interface CategoryTax {
  readonly category: string;
  readonly name: string;
  readonly rate: Decimal;
  readonly base: Decimal;
  readonly tax: Decimal;
}

export interface Taxes {
  readonly taxes: CategoryTax[];
  readonly taxTotal: Decimal;
}

/**
 * Tax once per category, on the sum of its lines: base × rate / 100, rounded half up. Taxing line by line would drift
 * from the printed base by a cent every few lines.
 *
 * @returns the categories that have lines, in the order of `categories`, whatever the order of the lines; a category
 *   at 0 % is listed with its base and no tax
 * @throws DomainError at /lines/i/category (no such category) or /categories/i (a code twice, a rate outside 0..100)
 * @see EN 16931-1, BR-CO-17 and BR-CO-14
 */
export function taxByCategory(
  lines: readonly TaxableLine[],
  categories: readonly TaxCategory[],
  currency: string,
): Taxes {
  requireSoundCategories(categories);
  const bases = new Map<string, Decimal>();
  lines.forEach(({ category, amount }, index) => {
    if (category === null) return;
    if (!categories.some(({ code }) => code === category)) {
      throw DomainError.at(`/lines/${index}/category`, `There is no tax category "${category}"; define it first.`);
    }
    bases.set(category, (bases.get(category) ?? new Decimal(0)).plus(amount));
  });
  const taxes = categories.flatMap(({ code, name, rate }) => {
    const base = bases.get(code);
    if (base === undefined) return [];
    return [{ category: code, name, rate, base, tax: roundMoney(base.times(rate).div(100), currency) }];
  });
  return { taxes, taxTotal: sumDecimals(taxes.map(({ tax }) => tax)) };
}

function requireSoundCategories(categories: readonly TaxCategory[]): void {
  const seen = new Set<string>();
  categories.forEach(({ code, rate }, index) => {
    if (seen.has(code)) throw DomainError.at(`/categories/${index}/code`, `The tax category "${code}" is there twice.`);
    seen.add(code);
    if (!rate.gte(0) || !rate.lte(100)) {
      throw DomainError.at(`/categories/${index}/rate`, 'A tax rate is a percentage from 0 to 100.');
    }
  });
}
