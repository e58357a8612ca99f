import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { Problem } from '../../platform/http/problem.js';
import { noSuchReference, notPossible } from '../../platform/http/problems.js';
import { PeopleService, type PersonEntity } from '../people/index.js';
import { requireMayVouchFor } from './devices.policy.js';
import { hashEnrolmentCode, newEnrolmentCode } from './enrolment-code.js';
import { EnrolmentsRepository } from './enrolments.repository.js';

export const CODE_MINUTES = 10;

export interface MadeEnrolment {
  readonly id: string;
  readonly code: string;
  readonly expiresAt: Date;
}

/** Makes a code for a person's phone. It replaces the person's code before: of a request sent twice, one code is good. */
@Injectable()
export class MakeEnrolment {
  constructor(
    private readonly db: TenantDatabase,
    private readonly enrolments: EnrolmentsRepository,
    private readonly people: PeopleService,
    private readonly clock: Clock,
  ) {}

  async execute(actor: Actor, personId: string): Promise<MadeEnrolment> {
    const { sessionId } = actor;
    if (sessionId === null) throw new Error('Only somebody who is signed in makes codes.');
    const code = newEnrolmentCode();
    const codeHash = hashEnrolmentCode(code);
    if (codeHash === null) throw new Error('A new code must be readable.');
    return this.db.write(actor, async () => {
      const person = await this.person(actor, personId);
      requireMayVouchFor(actor, person, '/personId');
      if (!person.active) throw notPossible('The person is not active, so no phone can speak for them. Make the person active first.', [{ pointer: '/personId', detail: 'must be an active person' }]);
      const now = this.clock.now();
      const expiresAt = new Date(now.getTime() + CODE_MINUTES * 60_000);
      const id = uuidv7();
      await this.enrolments.expireAllOf(actor, person.id, now);
      await this.enrolments.insert(actor, { id, personId: person.id, sessionId, codeHash, expiresAt });
      return { id, code, expiresAt };
    });
  }

  /** Locked: of codes that are made at the same moment, the later replaces the earlier. */
  private async person(actor: Actor, personId: string): Promise<PersonEntity> {
    try {
      return await this.people.lock(actor, personId);
    } catch (error) {
      if (error instanceof Problem && error.code === 'not-found') throw noSuchReference('/personId', 'person');
      throw error;
    }
  }
}
