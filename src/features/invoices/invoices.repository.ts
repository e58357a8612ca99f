import { Injectable } from '@nestjs/common';
import type { QueryDeepPartialEntity } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import { Decimal } from '../../domain/decimal.js';
import type { Actor } from '../../platform/auth/actor.js';
import { entityRows } from '../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { ResourceEntity } from '../../platform/resources/resource-entity.js';
import { ResourceStore } from '../../platform/resources/resource-store.js';
import { InvoiceEntity } from './invoice.entity.js';
import { InvoiceLineEntity } from './invoice-line.entity.js';

export type NewLine = Omit<InvoiceLineEntity, 'companyId' | 'id' | 'invoiceId' | 'position'>;

/** What was billed for a job and what came in, in the job's currency. */
export interface FiguresOfJob {
  /** Net of tax, over the issued invoices that are not void. */
  readonly invoicedNet: Decimal;
  /** With tax, as customers pay it. */
  readonly received: Decimal;
}

/** All SQL of invoices and their lines. */
@Injectable()
export class InvoicesRepository {
  readonly store: ResourceStore<InvoiceEntity>;

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, InvoiceEntity, 'invoice');
  }

  /** The invoice of the job that stands, if there is one. */
  standing(actor: Actor, jobId: string, basis: InvoiceEntity['basis']): Promise<InvoiceEntity | null> {
    return this.db.read(actor, (manager) =>
      manager
        .createQueryBuilder(InvoiceEntity, 'i')
        .where("i.companyId = :companyId AND i.jobId = :jobId AND i.basis = :basis AND i.state <> 'void'", { companyId: actor.companyId, jobId, basis })
        .getOne(),
    );
  }

  async addLines(actor: Actor, invoiceId: string, lines: readonly NewLine[]): Promise<void> {
    if (lines.length === 0) return;
    const rows = lines.map((line, position) => ({ ...line, companyId: actor.companyId, id: uuidv7(), invoiceId, position }));
    await this.db.write(actor, (manager) => manager.insert(InvoiceLineEntity, rows));
  }

  linesOf(actor: Actor, invoiceId: string): Promise<InvoiceLineEntity[]> {
    return this.db.read(actor, (manager) => entityRows(manager, InvoiceLineEntity, 'WHERE company_id = $1 AND invoice_id = $2 ORDER BY position', [actor.companyId, invoiceId]));
  }

  /** Writes to an invoice that this transaction holds locked, which is why it asks for no version. */
  writeLocked(actor: Actor, invoice: InvoiceEntity, values: Omit<QueryDeepPartialEntity<InvoiceEntity>, keyof ResourceEntity>): Promise<InvoiceEntity> {
    return this.store.update(actor, invoice.id, invoice.version, values);
  }

  async figuresOfJob(actor: Actor, jobId: string): Promise<FiguresOfJob> {
    const rows = await this.db.read(actor, (manager) =>
      manager.query<{ invoiced_net: string; received: string }[]>(
        `SELECT coalesce(sum(net_total), 0) AS invoiced_net, coalesce(sum(paid_total), 0) AS received
         FROM invoice WHERE company_id = $1 AND job_id = $2 AND state IN ('issued', 'part-paid', 'paid')`,
        [actor.companyId, jobId],
      ),
    );
    return { invoicedNet: new Decimal(rows[0]?.invoiced_net ?? 0), received: new Decimal(rows[0]?.received ?? 0) };
  }
}
