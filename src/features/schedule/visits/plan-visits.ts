import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { patched } from '../../../platform/http/merge-patch.js';
import { Problem } from '../../../platform/http/problem.js';
import { noSuchReference, staleVersion, stateConflict } from '../../../platform/http/problems.js';
import type { Made } from '../../../platform/resources/resource-store.js';
import { JobCrew, JobsService } from '../../jobs/index.js';
import type { VisitEntity } from './visit.entity.js';
import type { VisitFacts } from './visit-facts.js';
import { toVisitBody, toVisitRow } from './visit.mapper.js';
import { visitSpan } from './visit-span.js';
import { VisitBody } from './visits.dto.js';
import { VisitsRepository } from './visits.repository.js';

/** Plans visits and changes the plan. What speaks against a plan is a warning; only what can't be is refused. */
@Injectable()
export class PlanVisits {
  constructor(
    private readonly db: TenantDatabase,
    private readonly visits: VisitsRepository,
    private readonly jobs: JobsService,
    private readonly crew: JobCrew,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem 400 or 422 with the field, 409 when the id was used with another body */
  create(actor: Actor, body: VisitBody): Promise<Made<VisitEntity>> {
    return this.db.write(actor, async () => {
      const before = await this.visits.store.madeBefore(actor, body);
      if (before !== null) return { row: before, created: false };
      const made = await this.visits.store.create(actor, body, await this.rowOf(actor, body));
      await this.send(actor, made.row, body);
      return made;
    });
  }

  /** Applies a merge patch. @throws Problem as creation does, 404, 409 for a cancelled visit, 412 for a stale version */
  change(actor: Actor, id: string, version: number, patch: unknown): Promise<VisitEntity> {
    return this.db.write(actor, async () => {
      const row = await this.visits.store.lock(actor, id);
      if (row.version !== version) throw staleVersion('visit', row.version);
      if (row.state === 'cancelled') throw stateConflict('The visit is cancelled. Restore it first, or plan another one.');
      const body = await patched(VisitBody, toVisitBody(row, await this.factsOf(actor, id)), patch);
      const changed = await this.visits.store.update(actor, id, version, await this.rowOf(actor, body));
      await this.send(actor, changed, body);
      return changed;
    });
  }

  /** Repeated, it answers with the first reason. @throws Problem 404 */
  cancel(actor: Actor, id: string, reason: string): Promise<VisitEntity> {
    return this.db.write(actor, async () => {
      const row = await this.visits.store.lock(actor, id);
      if (row.state === 'cancelled') return row;
      return this.visits.store.update(actor, id, row.version, { state: 'cancelled', cancelReason: reason, changedAt: this.clock.now() });
    });
  }

  /** Puts a cancelled visit back on. @throws Problem 404 */
  restore(actor: Actor, id: string): Promise<VisitEntity> {
    return this.db.write(actor, async () => {
      const row = await this.visits.store.lock(actor, id);
      if (row.state === 'planned') return row;
      return this.visits.store.update(actor, id, row.version, { state: 'planned', cancelReason: null, changedAt: this.clock.now() });
    });
  }

  private async rowOf(actor: Actor, body: VisitBody): Promise<ReturnType<typeof toVisitRow>> {
    const { timeZone } = await this.jobOf(actor, body.jobId);
    return toVisitRow(body, timeZone, visitSpan(body.day, body.startTime, body.lengthMinutes, timeZone), this.clock.now());
  }

  private async jobOf(actor: Actor, id: string): ReturnType<JobsService['find']> {
    try {
      return await this.jobs.find(actor, id);
    } catch (error) {
      if (error instanceof Problem && error.code === 'not-found') throw noSuchReference('/jobId', 'job');
      throw error;
    }
  }

  /** Who comes to a visit is on the crew of its job, so that their phone keeps what they need there. */
  private async send(actor: Actor, visit: VisitEntity, body: VisitBody): Promise<void> {
    const personIds = (body.personIds ?? []).map((id) => id.toLowerCase());
    const there = await this.visits.peopleThere(actor, personIds);
    const missing = personIds.findIndex((id) => !there.has(id));
    if (missing >= 0) throw noSuchReference(`/personIds/${missing}`, 'person');
    await this.visits.setPeople(actor, visit.id, personIds, visit.changedAt);
    if (personIds.length > 0) await this.crew.join(actor, visit.jobId, personIds);
  }

  private async factsOf(actor: Actor, id: string): Promise<VisitFacts> {
    const facts = (await this.visits.factsOf(actor, [id])).get(id);
    if (facts === undefined) throw new Error(`The visit ${id} has no job.`);
    return facts;
  }
}
