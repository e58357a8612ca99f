import { DomainError, type Violation } from '../../../domain/errors.js';
import { Problem } from '../../../platform/http/problem.js';
import { invalidInput } from '../../../platform/http/problems.js';
import { validateAs } from '../../../platform/http/validation.js';
import { requestDigest } from '../../../platform/resources/digest.js';
import type { PartEntity } from '../part.entity.js';
import { type PartValues, toPartBody, toPartRow } from '../part.mapper.js';
import { PartBody } from '../parts.dto.js';
import { columnPointer, PART_COLUMNS, type PartColumn } from './columns.js';
import { requestOf } from './part-cells.js';
import type { Table } from './table.js';

/** What a row asks for, before anything is written. */
export interface PlannedRow {
  readonly number: number;
  readonly sku: string;
  /** The part that has this stock number. */
  readonly before: PartEntity | null;
  /** What the part becomes; null when the row is refused. */
  readonly values: PartValues | null;
  /** Whether that is what the part is already. */
  readonly unchanged: boolean;
  readonly errors: readonly Violation[];
}

/** The columns of a table, in its order. @throws Problem 400 for a column that is unknown, there twice, or no `sku` */
export function columnsOf(header: readonly string[]): PartColumn[] {
  const known = PART_COLUMNS.map(({ name }) => name);
  const errors: Violation[] = [];
  const columns = header.flatMap((name, i) => {
    const column = PART_COLUMNS.find((one) => one.name === name);
    if (column === undefined) errors.push({ pointer: `/header/${i}`, detail: `must be one of ${known.join(', ')}; columns are parted by commas` });
    else if (header.indexOf(name) < i) errors.push({ pointer: `/header/${i}`, detail: 'is there twice; keep one of the columns' });
    return column ?? [];
  });
  if (errors.length === 0 && !header.includes('sku')) errors.push({ pointer: '/header', detail: 'has no column sku, which tells the parts apart; add it' });
  if (errors.length > 0) throw invalidInput(errors.slice(0, 50));
  return columns;
}

/** @param check what only the company can tell: its currency and tax categories; throws a Problem */
export async function planRows(table: Table, columns: readonly PartColumn[], parts: ReadonlyMap<string, PartEntity>, fresh: object, check: (body: PartBody) => void): Promise<PlannedRow[]> {
  const at = columns.findIndex(({ name }) => name === 'sku');
  const firstRow = new Map<string, number>();
  const planned: PlannedRow[] = [];
  for (const { number, cells } of table.rows) {
    const sku = cells[at]?.trim() ?? '';
    const before = parts.get(sku) ?? null;
    const earlier = firstRow.get(sku);
    if (earlier === undefined) firstRow.set(sku, number);
    const read = await attempt(async () => {
      if (earlier !== undefined && sku !== '') throw DomainError.at('/sku', `stands in row ${earlier} already; keep one of the two rows`);
      if (cells.length !== columns.length) throw DomainError.at('', `has ${cells.length} cells, but the header names ${columns.length} columns; quote cells that hold a comma`);
      const body = await validateAs(PartBody, requestOf(columns, cells, before === null ? fresh as Record<string, unknown> : { ...toPartBody(before) }));
      check(body);
      return toPartRow(body);
    });
    planned.push({ number, sku, before, ...read, unchanged: before !== null && read.values !== null && isUnchanged(before, read.values) });
    // Ten thousand rows take seconds; others are to be served between them.
    if (planned.length % 100 === 0) await new Promise((resolve) => setImmediate(resolve));
  }
  return planned;
}

function isUnchanged(before: PartEntity, values: PartValues): boolean {
  return requestDigest(toPartBody(before)).equals(requestDigest(toPartBody(values)));
}

async function attempt(read: () => Promise<PartValues>): Promise<Pick<PlannedRow, 'values' | 'errors'>> {
  try {
    return { values: await read(), errors: [] };
  } catch (error) {
    if (error instanceof DomainError) return { values: null, errors: error.violations };
    if (!(error instanceof Problem)) throw error;
    return { values: null, errors: error.errors.map(({ pointer, detail }) => ({ pointer: columnPointer(pointer), detail })) };
  }
}
