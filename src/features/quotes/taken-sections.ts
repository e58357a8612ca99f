import { Decimal } from '../../domain/decimal.js';
import { DomainError } from '../../domain/errors.js';
import type { TaxCategory } from '../../domain/money/index.js';
import { notPossible } from '../../platform/http/problems.js';
import type { QuoteLineEntity } from './quote-line.entity.js';
import type { QuoteRevisionEntity } from './quote-revision.entity.js';
import type { QuoteSection } from './quote-sections.js';
import { type QuoteSums, sumsOf } from './quote-sums.js';

/**
 * The keys of what is taken, in the order of the quote; all base sections when nothing is said.
 * @throws Problem 422 for a section that is not there or named twice, or a base section of phase 1 left out
 */
export function sectionsTaken(sections: readonly QuoteSection[], chosen: readonly string[] | null | undefined): string[] {
  if (!chosen) return sections.filter(({ optional }) => !optional).map(({ key }) => key);
  chosen.forEach((key, index) => {
    if (!sections.some((section) => section.key === key)) throw notChosen(`/sections/${index}`, `is no section of the quote; ${sections.length === 0 ? 'it has none' : `they are ${sections.map((section) => section.key).join(', ')}`}`);
    if (chosen.indexOf(key) < index) throw notChosen(`/sections/${index}`, 'is named already; name each section once');
  });
  const missing = sections.filter(({ key, phase, optional }) => !optional && phase === 1 && !chosen.includes(key)).map(({ key }) => key);
  if (missing.length > 0) throw notChosen('/sections', `must name ${missing.join(', ')} too: what is not optional in phase 1 is always taken`);
  return sections.filter(({ key }) => chosen.includes(key)).map(({ key }) => key);
}

/** The lines of the sections taken, and those without a section. */
export function linesTaken(lines: readonly QuoteLineEntity[], taken: readonly string[]): QuoteLineEntity[] {
  return lines.filter(({ section }) => section === null || taken.includes(section));
}

/**
 * What is accepted, at the rates of the revision: a rate that the company changed since does not matter.
 * @throws Problem 422 when nothing is taken, or it comes to less than nothing or to more than money can hold
 */
export function sumsTaken(revision: QuoteRevisionEntity, taken: readonly QuoteLineEntity[]): QuoteSums {
  if (taken.length === 0) throw notChosen('/sections', 'must name at least one section: every line of the quote is in an optional section or a later phase');
  const sums = withinMoney(() => sumsOf(taken, ratesOf(revision), revision.currency));
  if (sums.grossTotal.lt(0)) throw notChosen('/sections', 'must come to no less than nothing: the discounts taken are more than the work taken');
  return sums;
}

/** Each category once, wherever in the revision it has lines. */
function ratesOf({ taxes, sections }: QuoteRevisionEntity): TaxCategory[] {
  const all = [...taxes, ...sections.flatMap((section) => section.taxes)];
  const byCode = new Map(all.map(({ category, name, rate }) => [category, { code: category, name, rate: new Decimal(rate) }]));
  return [...byCode.values()];
}

function withinMoney(compute: () => QuoteSums): QuoteSums {
  try {
    return compute();
  } catch (error) {
    if (error instanceof DomainError) throw notChosen('/sections', 'must come to a total that money can hold; take fewer sections');
    throw error;
  }
}

function notChosen(pointer: string, detail: string): Error {
  return notPossible('These sections can not be accepted so. Read the sections of the quote, and name those that the customer takes.', [{ pointer, detail }]);
}
