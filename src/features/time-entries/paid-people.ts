import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Problem } from '../../platform/http/problem.js';
import { noSuchReference, notPossible } from '../../platform/http/problems.js';
import { PeopleService, type PersonEntity } from '../people/index.js';
import type { TimeEntryEntity } from './time-entry.entity.js';

/** What an entry keeps of the person who worked. */
export type PaidPerson = Pick<TimeEntryEntity, 'personId' | 'hourlyWage' | 'burdenPercent'>;

/** Looks up whose hours are logged, and what they cost as of now. */
@Injectable()
export class PaidPeople {
  constructor(private readonly people: PeopleService) {}

  /** @throws Problem 422 at /personId when there is no such person, or one who does not work here any more */
  async find(actor: Actor, personId: string): Promise<PaidPerson> {
    const person = await this.lookUp(actor, personId);
    if (!person.active) {
      throw notPossible(`${person.name} is not active. Make the person active again to log hours.`, [{ pointer: '/personId', detail: 'must be an active person' }]);
    }
    return { personId: person.id, hourlyWage: person.hourlyWage, burdenPercent: person.burdenPercent };
  }

  private async lookUp(actor: Actor, personId: string): Promise<PersonEntity> {
    try {
      return await this.people.find(actor, personId);
    } catch (error) {
      if (error instanceof Problem && error.code === 'not-found') throw noSuchReference('/personId', 'person');
      throw error;
    }
  }
}
