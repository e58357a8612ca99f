import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { entityRows } from '../../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import type { ListQuery, Page } from '../../../platform/http/lists.js';
import { stateConflict } from '../../../platform/http/problems.js';
import { type Made, ResourceStore } from '../../../platform/resources/resource-store.js';
import type { WorkWeekPolicyBody } from './work-week-policies.dto.js';
import { WorkWeekPolicyEntity } from './work-week-policy.entity.js';
import { toWorkWeekPolicyRow } from './work-week-policy.mapper.js';

@Injectable()
export class WorkWeekPoliciesService {
  private readonly store: ResourceStore<WorkWeekPolicyEntity>;

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, WorkWeekPolicyEntity, 'workweek policy');
  }

  /** @throws Problem 409 when it would move the beginning of the workweek */
  create(actor: Actor, body: WorkWeekPolicyBody): Promise<Made<WorkWeekPolicyEntity>> {
    return this.db.write(actor, async () => {
      const before = await this.store.madeBefore(actor, body);
      if (before !== null) return { row: before, created: false };
      await this.requireSameBeginning(actor, body, null);
      return this.store.create(actor, body, toWorkWeekPolicyRow(body));
    });
  }

  find(actor: Actor, id: string): Promise<WorkWeekPolicyEntity> {
    return this.store.find(actor, id);
  }

  list(actor: Actor, query: ListQuery): Promise<Page<WorkWeekPolicyEntity>> {
    return this.store.list(actor, query);
  }

  /** @throws Problem 409 when it would move the beginning of the workweek away from other policies */
  update(actor: Actor, id: string, version: number, body: WorkWeekPolicyBody): Promise<WorkWeekPolicyEntity> {
    return this.db.write(actor, async () => {
      await this.requireSameBeginning(actor, body, id);
      return this.store.update(actor, id, version, toWorkWeekPolicyRow(body));
    });
  }

  /** All of the company, the one that counts first: by latest date, of two the one made last. One statement. */
  all(actor: Pick<Actor, 'companyId'>): Promise<WorkWeekPolicyEntity[]> {
    return this.db.read(actor, (manager) => entityRows(manager, WorkWeekPolicyEntity, 'WHERE company_id = $1 ORDER BY effective_from DESC, made_order DESC', [actor.companyId]));
  }

  /** A week that began on another day than the one before would overlap it, and hours would fall into both or neither. */
  private async requireSameBeginning(actor: Actor, { startsOn, startsAt }: WorkWeekPolicyBody, except: string | null): Promise<void> {
    // Two policies made at once must not each be the first one.
    await this.db.write(actor, (manager) => manager.query('SELECT pg_advisory_xact_lock(hashtextextended($1, 0))', [`work-week-policy ${actor.companyId}`]));
    const other = (await this.all(actor)).find((policy) => policy.id !== except && (policy.startsOn !== startsOn || policy.startsAt !== startsAt));
    if (other === undefined) return;
    throw stateConflict(`The workweek begins on ${other.startsOn} at ${other.startsAt} and stays so once it is set. Keep it, or change the only policy while there is but one.`, [
      { pointer: other.startsOn === startsOn ? '/startsAt' : '/startsOn', detail: `must stay ${other.startsOn === startsOn ? other.startsAt : other.startsOn}` },
    ]);
  }
}
