import { decimal, sumDecimals } from '../../domain/decimal.js';
import type { DocumentFormat, DocumentTable, TableRow, TableSection } from '../../platform/documents/index.js';
import type { DocumentLine } from './parts.js';

const UNIT_SYMBOLS: Readonly<Record<string, string>> = { ft2: 'ft²', yd2: 'yd²', m2: 'm²', ft3: 'ft³', yd3: 'yd³', m3: 'm³' };

/** Lines that stand together under a heading. */
export interface LineGroup {
  readonly title: string;
  readonly lines: readonly DocumentLine[];
  /** What stands before their sum; none prints no sum. */
  readonly sumLabel: string | null;
}

/** The priced lines by cost code, in the order in which the codes first appear, each group with its sum. */
export function pricedTable(lines: readonly DocumentLine[], currency: string, format: DocumentFormat): DocumentTable {
  // Under a single line its own amount would only be said twice.
  const groups = Array.from(byCostCode(lines), ([title, some]) => ({ title, lines: some, sumLabel: some.length === 1 ? null : `${title} subtotal` }));
  return groupedTable(groups, currency, format);
}

/** The groups in their order. */
export function groupedTable(groups: readonly LineGroup[], currency: string, format: DocumentFormat): DocumentTable {
  return {
    columns: [
      { key: 'description', header: 'Description', align: 'left', weight: 1 },
      { key: 'quantity', header: 'Quantity', align: 'right', weight: 0 },
      { key: 'unitPrice', header: 'Unit price', align: 'right', weight: 0 },
      { key: 'amount', header: `Amount (${currency})`, align: 'right', weight: 0 },
    ],
    sections: groups.map((group) => section(group, format)),
  };
}

/** The lines by cost code, in the order in which the codes first appear. */
export function byCostCode(lines: readonly DocumentLine[]): Map<string, DocumentLine[]> {
  const groups = new Map<string, DocumentLine[]>();
  for (const line of lines) groups.set(line.costCode, [...(groups.get(line.costCode) ?? []), line]);
  return groups;
}

function section({ title, lines, sumLabel }: LineGroup, format: DocumentFormat): TableSection {
  const rows = lines.map((line) => row(line, format));
  if (sumLabel === null) return { title, rows };
  const sum = sumDecimals(lines.map((line) => decimal(line.amount))).toFixed();
  return { title, rows, subtotal: { label: sumLabel, value: format.amount(sum) } };
}

/** A labor line never shows its quantity: that is the company's hours, and the price divided by them its rate. */
function row(line: DocumentLine, format: DocumentFormat): TableRow {
  const shown = { description: line.description, amount: format.amount(line.amount) };
  if (line.kind === 'labor' || line.quantity === null) return shown;
  const unit = line.unit === null ? '' : ` ${UNIT_SYMBOLS[line.unit] ?? line.unit}`;
  const unitPrice = line.unitPrice === null ? '' : format.amount(line.unitPrice);
  return { ...shown, quantity: format.quantity(line.quantity) + unit, unitPrice };
}
