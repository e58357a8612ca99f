import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { entityRows } from '../../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { type Page, pageOf } from '../../../platform/http/lists.js';
import { ResourceStore } from '../../../platform/resources/resource-store.js';
import { FACTS_OF_VISITS } from './facts-of-visits.js';
import { VisitEntity } from './visit.entity.js';
import type { VisitFacts } from './visit-facts.js';
import type { VisitsQuery } from './visits.dto.js';

/** All SQL of visits and of who comes to them. */
@Injectable()
export class VisitsRepository {
  readonly store: ResourceStore<VisitEntity>;

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, VisitEntity, 'visit');
  }

  /** Newest first; what the query leaves open does not filter. */
  list(actor: Actor, { limit, cursor, jobId, personId, day, firstDay, lastDay }: VisitsQuery): Promise<Page<VisitEntity>> {
    return this.db.read(actor, async (manager) => {
      const rows = await entityRows(
        manager,
        VisitEntity,
        `WHERE company_id = $1 AND ($2::uuid IS NULL OR job_id = $2) AND ($3::date IS NULL OR day = $3) AND ($4::date IS NULL OR day >= $4) AND ($5::date IS NULL OR day <= $5)
           AND ($6::uuid IS NULL OR id IN (SELECT visit_id FROM visit_person WHERE company_id = $1 AND person_id = $6 AND left_at IS NULL))
           AND ($7::uuid IS NULL OR id < $7) ORDER BY id DESC LIMIT $8`,
        [actor.companyId, jobId, day, firstDay, lastDay, personId, cursor, limit + 1],
      );
      return pageOf(rows, limit);
    });
  }

  /** What is known of many visits, by their ids, in one statement. */
  async factsOf(actor: Pick<Actor, 'companyId'>, ids: readonly string[]): Promise<Map<string, VisitFacts>> {
    if (ids.length === 0) return new Map();
    const rows = await this.db.read(actor, (manager) => manager.query<(VisitFacts & { id: string })[]>(FACTS_OF_VISITS, [actor.companyId, ids]));
    return new Map(rows.map(({ id, ...facts }) => [id, facts]));
  }

  /** Who comes to many visits, in one statement. */
  async peopleOf(actor: Pick<Actor, 'companyId'>, ids: readonly string[]): Promise<Map<string, string[]>> {
    const rows = await this.db.read(actor, (manager) =>
      manager.query<{ id: string; people: string[] }[]>(
        'SELECT visit_id AS id, array_agg(person_id ORDER BY position) AS people FROM visit_person WHERE company_id = $1 AND visit_id = ANY ($2) AND left_at IS NULL GROUP BY visit_id',
        [actor.companyId, ids],
      ),
    );
    return new Map(rows.map(({ id, people }) => [id, people]));
  }

  /** Makes these, in this order, the people who come; whoever came and is not among them is marked as taken off. */
  setPeople(actor: Actor, visitId: string, personIds: readonly string[], at: Date): Promise<void> {
    return this.db.write(actor, async (manager) => {
      await manager.query('UPDATE visit_person SET left_at = $4 WHERE company_id = $1 AND visit_id = $2 AND left_at IS NULL AND person_id <> ALL ($3::uuid[])', [actor.companyId, visitId, personIds, at]);
      if (personIds.length === 0) return;
      await manager.query(
        `INSERT INTO visit_person (company_id, visit_id, person_id, position)
         SELECT $1, $2, person_id, position FROM unnest($3::uuid[]) WITH ORDINALITY AS named (person_id, position)
         ON CONFLICT ON CONSTRAINT pk_visit_person DO UPDATE SET left_at = NULL, position = excluded.position`,
        [actor.companyId, visitId, personIds],
      );
    });
  }

  /** Which of these people there are; one statement. */
  async peopleThere(actor: Actor, personIds: readonly string[]): Promise<Set<string>> {
    if (personIds.length === 0) return new Set();
    const rows = await this.db.read(actor, (manager) => manager.query<{ id: string }[]>('SELECT id FROM person WHERE company_id = $1 AND id = ANY ($2)', [actor.companyId, personIds]));
    return new Set(rows.map(({ id }) => id));
  }

  /** The visits of some local days, cancelled ones among them, by their start; `limit` at most. */
  ofDays(actor: Actor, firstDay: string, lastDay: string, limit: number): Promise<VisitEntity[]> {
    return this.db.read(actor, (manager) =>
      entityRows(manager, VisitEntity, 'WHERE company_id = $1 AND day BETWEEN $2 AND $3 ORDER BY starts_at, id LIMIT $4', [actor.companyId, firstDay, lastDay, limit]),
    );
  }

  /** The planned visits that a person comes to on a local day, by their start. */
  ofPerson(actor: Actor, personId: string, day: string): Promise<VisitEntity[]> {
    return this.db.read(actor, (manager) =>
      entityRows(
        manager,
        VisitEntity,
        `WHERE company_id = $1 AND day = $3 AND state = 'planned' AND id IN (SELECT visit_id FROM visit_person WHERE company_id = $1 AND person_id = $2 AND left_at IS NULL) ORDER BY starts_at, id`,
        [actor.companyId, personId, day],
      ),
    );
  }
}
