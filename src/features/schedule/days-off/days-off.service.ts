import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { entityRows } from '../../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import type { Page } from '../../../platform/http/lists.js';
import { stateConflict } from '../../../platform/http/problems.js';
import { type Made, ResourceStore } from '../../../platform/resources/resource-store.js';
import { DayOffEntity } from './day-off.entity.js';
import { toDayOffRow } from './day-off.mapper.js';
import type { DaysOffBody, DaysOffQuery } from './days-off.dto.js';
import { onlyOwnDaysOff, requireMayEnterFor, requireMaySeeDaysOff } from './days-off.policy.js';

@Injectable()
export class DaysOffService {
  private readonly store: ResourceStore<DayOffEntity>;

  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
  ) {
    this.store = new ResourceStore(db, DayOffEntity, 'entry of days off');
  }

  /** @throws Problem 403 when crew enter them for somebody else */
  async create(actor: Actor, body: DaysOffBody): Promise<Made<DayOffEntity>> {
    requireMayEnterFor(actor, body.personId);
    return this.store.create(actor, body, toDayOffRow(body));
  }

  /** @throws Problem 404, for crew also for somebody else's */
  async find(actor: Actor, id: string): Promise<DayOffEntity> {
    const row = await this.store.find(actor, id);
    requireMaySeeDaysOff(actor, row);
    return row;
  }

  /** Newest first; for crew their own. @throws Problem 403 when crew ask for somebody else's */
  async list(actor: Actor, query: DaysOffQuery): Promise<Page<DayOffEntity>> {
    if (query.personId !== undefined) requireMayEnterFor(actor, query.personId);
    return this.store.list(actor, query, { personId: query.personId ?? onlyOwnDaysOff(actor) });
  }

  /** @throws Problem 403, 404, 409 for withdrawn ones, 412 for a stale version */
  async update(actor: Actor, id: string, version: number, body: DaysOffBody): Promise<DayOffEntity> {
    requireMayEnterFor(actor, body.personId);
    return this.db.write(actor, async () => {
      const row = await this.store.lock(actor, id);
      if (row.withdrawnAt !== null) throw stateConflict('The days off were withdrawn. Enter them anew.');
      return this.store.update(actor, id, version, toDayOffRow(body));
    });
  }

  /** May be repeated. @throws Problem 404 */
  withdraw(actor: Actor, id: string): Promise<DayOffEntity> {
    return this.db.write(actor, async () => {
      const row = await this.store.lock(actor, id);
      requireMaySeeDaysOff(actor, row);
      return row.withdrawnAt === null ? this.store.update(actor, id, row.version, { withdrawnAt: this.clock.now() }) : row;
    });
  }

  /** Those that fall on some days, the actor's own only for crew; `limit` at most. */
  between(actor: Actor, firstDay: string, lastDay: string, limit: number): Promise<DayOffEntity[]> {
    return this.db.read(actor, (manager) =>
      entityRows(
        manager,
        DayOffEntity,
        'WHERE company_id = $1 AND withdrawn_at IS NULL AND last_day >= $2 AND first_day <= $3 AND ($4::uuid IS NULL OR person_id = $4) ORDER BY first_day, id LIMIT $5',
        [actor.companyId, firstDay, lastDay, onlyOwnDaysOff(actor) ?? null, limit],
      ),
    );
  }
}
