import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { ListQuery, Page } from '../../platform/http/lists.js';
import { patched } from '../../platform/http/merge-patch.js';
import { invalidInput, staleVersion, stateConflict } from '../../platform/http/problems.js';
import type { Made } from '../../platform/resources/resource-store.js';
import { ChargeJob, type JobEntity } from '../jobs/index.js';
import type { CostEntity } from './cost.entity.js';
import { toCostBody, toCostRow } from './cost.mapper.js';
import { CostBody } from './costs.dto.js';
import { CostsRepository, type SpentByKind } from './costs.repository.js';

/** What is bought for jobs. */
@Injectable()
export class CostsService {
  constructor(
    private readonly db: TenantDatabase,
    private readonly costs: CostsRepository,
    private readonly charge: ChargeJob,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem 400 or 422 with the field, 409 when the job is cancelled or the id was used with another body */
  create(actor: Actor, body: CostBody): Promise<Made<CostEntity>> {
    return this.db.write(actor, async () => {
      // Before all else: a repeated request answers as the first time, though the job was cancelled in the meantime.
      const before = await this.costs.store.madeBefore(actor, body);
      if (before !== null) return { row: before, created: false };
      requireAmount(body, await this.charge.withCost(actor, body.jobId));
      return this.costs.store.create(actor, body, toCostRow(body));
    });
  }

  /** @throws Problem 404 */
  find(actor: Actor, id: string): Promise<CostEntity> {
    return this.costs.store.find(actor, id);
  }

  list(actor: Actor, query: ListQuery & { readonly jobId?: string }): Promise<Page<CostEntity>> {
    return this.costs.store.list(actor, query, { jobId: query.jobId });
  }

  /** Applies a merge patch. @throws Problem as creating does, and 409 for a voided cost, 412 for a stale version */
  change(actor: Actor, id: string, version: number, patch: unknown): Promise<CostEntity> {
    return this.db.write(actor, async () => {
      const row = await this.costs.store.lock(actor, id);
      if (row.version !== version) throw staleVersion('cost', row.version);
      if (row.voidedAt !== null) throw stateConflict('The cost is void and stays as it is. Enter it anew.');
      const body = await patched(CostBody, toCostBody(row), patch);
      if (body.jobId.toLowerCase() !== row.jobId) await this.charge.withCost(actor, row.jobId);
      requireAmount(body, await this.charge.withCost(actor, body.jobId));
      return this.costs.store.update(actor, id, version, toCostRow(body));
    });
  }

  /** Repeated, it answers with the first reason. @throws Problem 404, or 409 when the job is cancelled */
  void(actor: Actor, id: string, reason: string): Promise<CostEntity> {
    return this.db.write(actor, async () => {
      const row = await this.costs.store.lock(actor, id);
      if (row.voidedAt !== null) return row;
      await this.charge.withCost(actor, row.jobId);
      return this.costs.store.update(actor, id, row.version, { voidedAt: this.clock.now(), voidReason: reason });
    });
  }

  /** The job's purchases by kind, without voided ones; one statement. */
  spentOnJob(actor: Actor, jobId: string): Promise<SpentByKind> {
    return this.costs.spentOnJob(actor, jobId);
  }
}

/** @throws Problem 400 for another currency than the job's, which could not be added up with the rest, and for nothing */
function requireAmount({ amount }: CostBody, job: JobEntity): void {
  if (amount.currency !== job.currency) {
    throw invalidInput([{ pointer: '/amount/currency', detail: `must be ${job.currency}, the company's currency; convert the bill first` }]);
  }
  if (new Decimal(amount.amount).isZero()) {
    throw invalidInput([{ pointer: '/amount/amount', detail: 'must not be 0; a cost is above 0, a supplier\'s credit below' }]);
  }
}
