import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { noSuchReference, notPossible } from '../../platform/http/problems.js';
import { PeopleService, type PersonEntity } from '../people/index.js';
import type { TimeEntryEntity } from './time-entry.entity.js';

/** What an entry keeps of the person who worked. */
export type PaidPerson = Pick<TimeEntryEntity, 'personId' | 'hourlyWage' | 'burdenPercent'>;

/** People whose hours are logged. */
export class FoundPeople {
  constructor(private readonly people: ReadonlyMap<string, PersonEntity>) {}

  /** @throws Problem 422 at /personId when there is no such person, or one who does not work here any more */
  require(personId: string): PaidPerson {
    const person = this.people.get(personId.toLowerCase());
    if (person === undefined) throw noSuchReference('/personId', 'person');
    if (!person.active) {
      throw notPossible(`${person.name} is not active. Ask the office to make the person active again, then log the hours anew.`, [{ pointer: '/personId', detail: 'must be an active person' }]);
    }
    return { personId: person.id, hourlyWage: person.hourlyWage, burdenPercent: person.burdenPercent };
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

  /** @throws Problem 422 at /personId when there is no such person, or one who does not work here any more */
  async find(actor: Actor, personId: string): Promise<PaidPerson> {
    return (await this.findMany(actor, [personId])).require(personId);
  }
}
