import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { noSuchReference } from '../../platform/http/problems.js';
import { PeopleService, type PersonEntity } from '../people/index.js';
import type { TimeEntryEntity } from './time-entry.entity.js';

/** What an entry keeps of the person who worked. */
export type PaidPerson = Pick<TimeEntryEntity, 'personId' | 'hourlyWage' | 'burdenPercent'>;

export interface WorkingPerson {
  readonly pay: PaidPerson;
  /** Whether they work here still. */
  readonly active: boolean;
}

/** People whose hours are logged. */
export class FoundPeople {
  constructor(private readonly people: ReadonlyMap<string, PersonEntity>) {}

  /** @throws Problem 422 at /personId when there is no such person */
  require(personId: string): WorkingPerson {
    const person = this.people.get(personId.toLowerCase());
    if (person === undefined) throw noSuchReference('/personId', 'person');
    return { pay: { personId: person.id, hourlyWage: person.hourlyWage, burdenPercent: person.burdenPercent }, active: person.active };
  }
}

/** Looks up whose hours are logged, and what they cost as of now. */
@Injectable()
export class PaidPeople {
  constructor(private readonly people: PeopleService) {}

  /** One statement, whatever their number. */
  async findMany(actor: Actor, personIds: readonly string[]): Promise<FoundPeople> {
    return new FoundPeople(await this.people.findMany(actor, [...new Set(personIds.map((id) => id.toLowerCase()))]));
  }

  /** @throws Problem 422 at /personId when there is no such person */
  async find(actor: Actor, personId: string): Promise<WorkingPerson> {
    return (await this.findMany(actor, [personId])).require(personId);
  }
}
