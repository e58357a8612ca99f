import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import type { Page } from '../../../platform/http/lists.js';
import { patched } from '../../../platform/http/merge-patch.js';
import { invalidInput, staleVersion } from '../../../platform/http/problems.js';
import { type Made, ResourceStore } from '../../../platform/resources/resource-store.js';
import { FactPlaces } from '../fact/fact-places.js';
import { PunchItemBody, type PunchItemsQuery } from './punch-item.dto.js';
import { PunchItemEntity } from './punch-item.entity.js';
import { toPunchItemBody } from './punch-item.mapper.js';

/** What is left to do on jobs. */
@Injectable()
export class PunchItemsService {
  private readonly store: ResourceStore<PunchItemEntity>;

  constructor(
    private readonly db: TenantDatabase,
    private readonly places: FactPlaces,
    private readonly clock: Clock,
  ) {
    this.store = new ResourceStore(db, PunchItemEntity, 'punch-list item');
  }

  /** @throws Problem 422 at /jobId or /featureId, 409 when the id was used with another body */
  add(actor: Actor, body: PunchItemBody): Promise<Made<PunchItemEntity>> {
    return this.db.write(actor, async () => {
      const before = await this.store.madeBefore(actor, body);
      if (before !== null) return { row: before, created: false };
      const { job, featureId } = await this.places.find(actor, body);
      const values = { jobId: job.id, featureId, description: body.description, place: body.place ?? null, recordedBy: actor.personId };
      return this.store.create(actor, body, { ...values, ...this.stateAfter(actor, null, body) });
    });
  }

  /** @throws Problem 404 */
  find(actor: Actor, id: string): Promise<PunchItemEntity> {
    return this.store.find(actor, id);
  }

  list(actor: Actor, query: PunchItemsQuery): Promise<Page<PunchItemEntity>> {
    return this.store.list(actor, query, { jobId: query.jobId, featureId: query.featureId, state: query.state });
  }

  /** Applies a merge patch. @throws Problem 404, 412 for a stale version, 400 or 422 with the field */
  change(actor: Actor, id: string, version: number, patch: unknown): Promise<PunchItemEntity> {
    return this.db.write(actor, async () => {
      const row = await this.store.lock(actor, id);
      if (row.version !== version) throw staleVersion('punch-list item', row.version);
      const body = await patched(PunchItemBody, toPunchItemBody(row), patch);
      if (body.jobId.toLowerCase() !== row.jobId) throw invalidInput([{ pointer: '/jobId', detail: 'never changes; add the item to the other job' }]);
      const { featureId } = await this.places.find(actor, body);
      return this.store.update(actor, id, version, { featureId, description: body.description, place: body.place ?? null, ...this.stateAfter(actor, row, body) });
    });
  }

  /** Whoever marks it as done first did it; a later change of its words does not take that away. */
  private stateAfter(actor: Actor, before: PunchItemEntity | null, body: PunchItemBody): Pick<PunchItemEntity, 'state' | 'doneAt' | 'doneBy'> {
    if (body.state !== 'done') return { state: 'open', doneAt: null, doneBy: null };
    if (before?.state === 'done') return { state: 'done', doneAt: before.doneAt, doneBy: before.doneBy };
    return { state: 'done', doneAt: this.clock.now(), doneBy: actor.personId };
  }
}
