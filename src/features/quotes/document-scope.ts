import { decimal, sumDecimals } from '../../domain/decimal.js';
import type { DocumentFormat, DocumentTable, Note, Total } from '../../platform/documents/index.js';
import { byCostCode, type DocumentLine, groupedTable, type LineGroup, requireSum } from '../customer-documents/index.js';

/** A section on paper; amounts are decimal text in the currency's own digits. */
export interface DocumentSection {
  readonly title: string;
  readonly phase: number;
  readonly optional: boolean;
  readonly lines: readonly DocumentLine[];
  readonly netTotal: string;
  readonly taxTotal: string;
  readonly grossTotal: string;
}

/** What can be taken or left, and the lines that are taken in any case. */
export interface DocumentScope {
  readonly always: readonly DocumentLine[];
  readonly sections: readonly DocumentSection[];
}

const ALWAYS = 'Included in any case';

/** The sections phase by phase, in each phase the optional ones last, so that what is in the total stands together. */
export function scopeTable({ always, sections }: DocumentScope, currency: string, format: DocumentFormat): DocumentTable {
  const phased = phasesOf(sections).length > 1;
  const groups = inOrder(sections).map((section): LineGroup => {
    const { title, phase, optional, lines } = section;
    const name = `${phased ? `Phase ${phase}: ` : ''}${title}`;
    const sumLabel = optional ? `${title}, optional, not in the totals below` : `${title} subtotal`;
    return { title: optional ? `${name} (optional)` : name, lines: gathered(lines), sumLabel };
  });
  const first = always.length === 0 ? [] : [{ title: ALWAYS, lines: gathered(always), sumLabel: `${ALWAYS}, subtotal` }];
  return groupedTable([...first, ...groups], currency, format);
}

/**
 * What each phase adds to the net total, when there are several to add up.
 * @throws RangeError when a section's total is not that of its lines, or theirs not the net total
 */
export function phaseTotals({ always, sections }: DocumentScope, netTotal: string, format: DocumentFormat): Total[] {
  for (const { title, lines, ...section } of sections) requireSum(`total of ${title}`, section.netTotal, lines.map(({ amount }) => amount));
  const base = sections.filter(({ optional }) => !optional);
  const parts = phasesOf(base).map((phase) => ({ label: `Phase ${phase}`, sum: sumOf(base.filter((section) => section.phase === phase).map((section) => section.netTotal)) }));
  if (always.length > 0) parts.unshift({ label: ALWAYS, sum: sumOf(always.map(({ amount }) => amount)) });
  requireSum('net total', netTotal, parts.map(({ sum }) => sum));
  if (phasesOf(base).length < 2) return [];
  return parts.map(({ label, sum }) => ({ label, value: format.money(sum), strong: false }));
}

/** What each option costs on its own, tax included. @throws RangeError when that is not its net and its tax */
export function optionTotals({ sections }: DocumentScope, format: DocumentFormat): Total[] {
  return inOrder(sections).filter(({ optional }) => optional).map(({ title, netTotal, taxTotal, grossTotal }) => {
    requireSum(`total of ${title}`, grossTotal, [netTotal, taxTotal]);
    const tax = decimal(taxTotal).isZero() ? '' : `: ${format.amount(netTotal)} and tax ${format.amount(taxTotal)}`;
    return { label: `Option ${title}${tax}`, value: format.money(grossTotal), strong: false };
  });
}

/** What the customer may leave out or add; null when there is nothing to choose. */
export function choices({ sections }: DocumentScope): Note | null {
  const later = sections.some(({ optional, phase }) => !optional && phase > 1);
  const options = sections.some(({ optional }) => optional);
  if (!later && !options) return null;
  return {
    heading: 'What you can choose',
    paragraphs: [
      ...(options ? ['What is marked optional is not in the total and is done only when you ask for it. Tax is computed once on all that you take, so a total with options can differ by a cent or two from the figures above added up.'] : []),
      ...(later ? ['The total covers every phase. The work of phase 2 and after can be left for later; what you leave is not part of what you accept, and we price it again when you want it done.'] : []),
    ],
  };
}

function inOrder(sections: readonly DocumentSection[]): DocumentSection[] {
  return [...sections].sort((a, b) => a.phase - b.phase || Number(a.optional) - Number(b.optional));
}

function phasesOf(sections: readonly DocumentSection[]): number[] {
  return [...new Set(sections.map(({ phase }) => phase))].sort((a, b) => a - b);
}

/** The labor beside the parts it goes with. */
function gathered(lines: readonly DocumentLine[]): DocumentLine[] {
  return [...byCostCode(lines).values()].flat();
}

function sumOf(amounts: readonly string[]): string {
  return sumDecimals(amounts.map((amount) => decimal(amount))).toFixed();
}
