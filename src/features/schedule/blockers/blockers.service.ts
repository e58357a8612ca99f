import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { entityRows } from '../../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import type { Page } from '../../../platform/http/lists.js';
import { stateConflict } from '../../../platform/http/problems.js';
import { type Made, ResourceStore } from '../../../platform/resources/resource-store.js';
import { BlockerEntity } from './blocker.entity.js';
import { toBlockerRow } from './blocker.mapper.js';
import type { BlockerBody, BlockersQuery } from './blockers.dto.js';

@Injectable()
export class BlockersService {
  private readonly store: ResourceStore<BlockerEntity>;

  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
  ) {
    this.store = new ResourceStore(db, BlockerEntity, 'blocker');
  }

  async create(actor: Actor, body: BlockerBody): Promise<Made<BlockerEntity>> {
    return this.store.create(actor, body, toBlockerRow(body));
  }

  /** @throws Problem 404, alike for one of another company and for none */
  find(actor: Actor, id: string): Promise<BlockerEntity> {
    return this.store.find(actor, id);
  }

  list(actor: Actor, query: BlockersQuery): Promise<Page<BlockerEntity>> {
    return this.store.list(actor, query, { jobId: query.jobId });
  }

  /** @throws Problem 404, 409 for a withdrawn one, 412 for a stale version */
  update(actor: Actor, id: string, version: number, body: BlockerBody): Promise<BlockerEntity> {
    return this.db.write(actor, async () => {
      const row = await this.store.lock(actor, id);
      if (row.withdrawnAt !== null) throw stateConflict('The blocker was withdrawn. Enter it anew.');
      return this.store.update(actor, id, version, toBlockerRow(body));
    });
  }

  /** May be repeated. @throws Problem 404 */
  withdraw(actor: Actor, id: string): Promise<BlockerEntity> {
    return this.db.write(actor, async () => {
      const row = await this.store.lock(actor, id);
      return row.withdrawnAt === null ? this.store.update(actor, id, row.version, { withdrawnAt: this.clock.now() }) : row;
    });
  }

  /** Those of many jobs that were not withdrawn, in one statement, in the order of making; `limit` at most. */
  ofJobs(actor: Actor, jobIds: readonly string[], limit: number): Promise<BlockerEntity[]> {
    return this.db.read(actor, (manager) =>
      entityRows(manager, BlockerEntity, 'WHERE company_id = $1 AND job_id = ANY ($2) AND withdrawn_at IS NULL ORDER BY id LIMIT $3', [actor.companyId, jobIds, limit]),
    );
  }
}
