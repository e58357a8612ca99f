import { decimal, sumDecimals } from '../../domain/decimal.js';
import type { DocumentFormat, Total } from '../../platform/documents/index.js';
import type { DocumentLine, DocumentTax } from './parts.js';

export interface DocumentSums {
  readonly lines: readonly DocumentLine[];
  readonly netTotal: string;
  readonly taxes: readonly DocumentTax[];
  readonly grossTotal: string;
}

/**
 * Net, each tax with its base, gross.
 * @throws RangeError when a sum is not that of the lines printed: a customer adds them up
 */
export function totalsOf(sums: DocumentSums, format: DocumentFormat, grossIsLast: boolean): Total[] {
  requireSum('net total', sums.netTotal, sums.lines.map((line) => line.amount));
  requireSum('gross total', sums.grossTotal, [sums.netTotal, ...sums.taxes.map((tax) => tax.tax)]);
  return [
    { label: 'Net total', value: format.money(sums.netTotal), strong: false },
    ...sums.taxes.map((tax) => ({ label: taxLabel(tax, format), value: format.money(tax.tax), strong: false })),
    { label: 'Total', value: format.money(sums.grossTotal), strong: grossIsLast },
  ];
}

function taxLabel({ name, rate, base }: DocumentTax, format: DocumentFormat): string {
  return `${name} ${format.percent(rate)} on ${format.amount(base)}`;
}

/** @throws RangeError when `total` is not the exact sum of `parts` */
export function requireSum(what: string, total: string, parts: readonly string[]): void {
  const sum = sumDecimals(parts.map((part) => decimal(part)));
  if (sum.equals(decimal(total))) return;
  throw new RangeError(`The ${what} ${total} is not the sum ${sum.toFixed()} of what the document prints.`);
}
