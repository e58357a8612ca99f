import { Injectable } from '@nestjs/common';
import type { Violation } from '../../../domain/errors.js';
import type { Actor } from '../../../platform/auth/actor.js';
import { CompaniesService, requireCompanyCurrency, requireTaxCategory } from '../../companies/index.js';
import { toPartBody } from '../part.mapper.js';
import { PART_COLUMNS } from './columns.js';
import { type ImportedRowView, type Outcome, OUTCOMES, type PartsImportView } from './import-report.dto.js';
import { cellsOf } from './part-cells.js';
import { type PartChange, PartsImportRepository } from './parts-import.repository.js';
import { columnsOf, planRows, type PlannedRow } from './plan-import.js';
import { readTable, writeTable } from './table.js';

const OVERTAKEN: readonly Violation[] = [{ pointer: '/sku', detail: 'was entered or changed by somebody else in the meantime; import the row again' }];

/** The catalog as a table, out and in. */
@Injectable()
export class ExchangeParts {
  constructor(
    private readonly companies: CompaniesService,
    private readonly parts: PartsImportRepository,
  ) {}

  /** Every part, by stock number. */
  async write(actor: Actor): Promise<string> {
    const rows = await this.parts.all(actor);
    return writeTable(PART_COLUMNS.map(({ name }) => name), rows.map((row) => cellsOf(toPartBody(row))));
  }

  /** @throws Problem 400 when the text is no table or its columns are not those of parts; a row never throws */
  async read(actor: Actor, csv: string): Promise<PartsImportView> {
    const table = readTable(csv);
    const columns = columnsOf(table.header);
    const at = columns.findIndex(({ name }) => name === 'sku');
    const company = await this.companies.current(actor);
    const there = await this.parts.bySku(actor, table.rows.map(({ cells }) => cells[at]?.trim() ?? ''));
    const planned = await planRows(table, columns, there, { unitCost: { currency: company.currency } }, (body) => {
      requireCompanyCurrency(company, body.unitCost, '/unitCost');
      requireTaxCategory(company, body.taxCategory, '/taxCategory');
    });
    const made = planned.flatMap(({ before, values }) => (before === null && values !== null ? values : []));
    const changed = planned.flatMap(({ before, values, unchanged }): PartChange[] => (before !== null && values !== null && !unchanged ? [{ before, values }] : []));
    const written = made.length + changed.length === 0 ? new Set<string>() : await this.parts.write(actor, made, changed);
    return report(planned.map((row) => outcomeOf(row, written)));
  }
}

function outcomeOf(row: PlannedRow, written: ReadonlySet<string>): ImportedRowView {
  const { number, sku, before, values, unchanged, errors } = row;
  const become = (outcome: Outcome, why: readonly Violation[] = []): ImportedRowView => ({ row: number, sku, outcome, errors: [...why] });
  if (values === null) return become('refused', errors);
  if (unchanged) return become('unchanged');
  if (!written.has(sku)) return become('refused', OVERTAKEN);
  return become(before === null ? 'made' : 'changed');
}

function report(rows: ImportedRowView[]): PartsImportView {
  const count = (outcome: Outcome): number => rows.filter((row) => row.outcome === outcome).length;
  const [made, changed, unchanged, refused] = OUTCOMES.map(count) as [number, number, number, number];
  return { made, changed, unchanged, refused, rows };
}
