import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import type { Page } from '../../../platform/http/lists.js';
import { onlyOwnDaysOff } from '../days-off/days-off.policy.js';
import type { VisitEntity } from './visit.entity.js';
import { toPlannedVisitView, toVisitView } from './visit.mapper.js';
import type { VisitsQuery } from './visits.dto.js';
import { VisitsRepository } from './visits.repository.js';
import type { PlannedVisitView, VisitView } from './visits.view.js';

/** What is read of visits. */
@Injectable()
export class VisitsService {
  constructor(private readonly visits: VisitsRepository) {}

  /** @throws Problem 404, alike for a visit of another company and for none */
  find(actor: Actor, id: string): Promise<VisitEntity> {
    return this.visits.store.find(actor, id);
  }

  /** Newest first; two statements. */
  async list(actor: Actor, query: VisitsQuery): Promise<Page<VisitView>> {
    const page = await this.visits.list(actor, query);
    return { items: await this.withWarnings(actor, page.items), nextCursor: page.nextCursor };
  }

  /** The visits with who comes and what speaks against them, in their order; crew are told of no days off of others. One statement. */
  async withWarnings(actor: Actor, rows: readonly VisitEntity[]): Promise<VisitView[]> {
    const facts = await this.visits.factsOf(actor, rows.map(({ id }) => id));
    const only = onlyOwnDaysOff(actor);
    return rows.flatMap((row) => {
      const known = facts.get(row.id);
      return known === undefined ? [] : [toVisitView(row, only === undefined ? known : { ...known, absences: known.absences.filter(({ personId }) => personId === only) })];
    });
  }

  async withWarning(actor: Actor, row: VisitEntity): Promise<VisitView> {
    const [view] = await this.withWarnings(actor, [row]);
    if (view === undefined) throw new Error(`The visit ${row.id} has no job.`);
    return view;
  }

  /** The visits as phones keep them, in their order; one statement. */
  async planned(actor: Actor, rows: readonly VisitEntity[]): Promise<PlannedVisitView[]> {
    const people = await this.visits.peopleOf(actor, rows.map(({ id }) => id));
    return rows.map((row) => toPlannedVisitView(row, people.get(row.id) ?? []));
  }

  /** The planned visits that a person comes to on a local day (YYYY-MM-DD at each site), by their start; one statement. */
  ofPerson(actor: Actor, personId: string, day: string): Promise<VisitEntity[]> {
    return this.visits.ofPerson(actor, personId, day);
  }

  /** The visits of some local days, cancelled ones among them, by their start; `limit` at most. */
  ofDays(actor: Actor, firstDay: string, lastDay: string, limit: number): Promise<VisitEntity[]> {
    return this.visits.ofDays(actor, firstDay, lastDay, limit);
  }
}
