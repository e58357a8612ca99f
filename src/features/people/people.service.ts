import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { ListQuery, Page } from '../../platform/http/lists.js';
import { stateConflict } from '../../platform/http/problems.js';
import { type Made, ResourceStore } from '../../platform/resources/resource-store.js';
import type { PersonBody } from './people.dto.js';
import { PersonEntity } from './person.entity.js';
import { toPersonRow } from './person.mapper.js';

type Dismissal = (actor: Actor, personId: string) => Promise<void>;

/** The people of the company. */
@Injectable()
export class PeopleService {
  private readonly store: ResourceStore<PersonEntity>;
  private readonly dismissals: Dismissal[] = [];

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, PersonEntity, 'person');
  }

  /** What another slice does, in the same transaction, with what it keeps for a person who is made inactive. It may be called again for the same. */
  whenDismissed(dismissal: Dismissal): void {
    this.dismissals.push(dismissal);
  }

  create(actor: Actor, body: PersonBody): Promise<Made<PersonEntity>> {
    return this.store.create(actor, body, toPersonRow(body));
  }

  find(actor: Actor, id: string): Promise<PersonEntity> {
    return this.store.find(actor, id);
  }

  /** The person, neither changed nor dismissed until the transaction of the caller ends. @throws Problem 404 */
  lock(actor: Actor, id: string): Promise<PersonEntity> {
    return this.store.lock(actor, id);
  }

  /** Those that are there, by id; one statement. */
  findMany(actor: Actor, ids: readonly string[]): Promise<Map<string, PersonEntity>> {
    return this.store.findMany(actor, ids);
  }

  list(actor: Actor, query: ListQuery): Promise<Page<PersonEntity>> {
    return this.store.list(actor, query);
  }

  /** @throws Problem 409 when nobody would be left who owns the company's account */
  update(actor: Actor, id: string, version: number, body: PersonBody): Promise<PersonEntity> {
    return this.db.write(actor, async (manager) => {
      // Locked together, so that two owners can't demote each other at once.
      const owners = await manager.find(PersonEntity, { where: { companyId: actor.companyId, role: 'owner', active: true }, lock: { mode: 'pessimistic_write' } });
      const staysOwner = body.role === 'owner' && body.active !== false;
      if (!staysOwner && owners.length === 1 && owners[0]?.id === id) {
        throw stateConflict('This is the company\'s only active owner. Make somebody else an owner first.', [{ pointer: '/role', detail: 'must stay owner, and active, while there is no other owner' }]);
      }
      const row = await this.store.update(actor, id, version, toPersonRow(body));
      if (!row.active) for (const dismissal of this.dismissals) await dismissal(actor, id);
      return row;
    });
  }
}
