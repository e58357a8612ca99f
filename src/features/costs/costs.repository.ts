import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { ResourceStore } from '../../platform/resources/resource-store.js';
import { CostEntity, COST_KINDS, type CostKind } from './cost.entity.js';

export type SpentByKind = Readonly<Record<CostKind, Decimal>>;

/** All SQL of costs. */
@Injectable()
export class CostsRepository {
  readonly store: ResourceStore<CostEntity>;

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, CostEntity, 'cost');
  }

  /** What a job's purchases come to by kind, without the voided ones; one statement, whatever their number. */
  async spentOnJob(actor: Actor, jobId: string): Promise<SpentByKind> {
    const rows = await this.db.read(actor, (manager) =>
      manager.query<{ kind: CostKind; spent: string }[]>(
        'SELECT kind, sum(amount) AS spent FROM cost WHERE company_id = $1 AND job_id = $2 AND voided_at IS NULL GROUP BY kind',
        [actor.companyId, jobId],
      ),
    );
    const spent = new Map(rows.map((row) => [row.kind, row.spent]));
    return Object.fromEntries(COST_KINDS.map((kind) => [kind, new Decimal(spent.get(kind) ?? 0)])) as Record<CostKind, Decimal>;
  }
}
