import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { encodeSecretToken, hashSecret } from '../../platform/auth/secret-token.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { Problem } from '../../platform/http/problem.js';
import { requestDigest } from '../../platform/resources/digest.js';
import type { Made } from '../../platform/resources/resource-store.js';
import { PeopleService } from '../people/index.js';
import { DeviceSessions } from '../sessions/index.js';
import { CodeLimits } from './code-limits.js';
import type { DeviceEntity } from './device.entity.js';
import type { DeviceBody } from './devices.dto.js';
import { mayVouchFor } from './devices.policy.js';
import { DevicesRepository } from './devices.repository.js';
import { hashEnrolmentCode } from './enrolment-code.js';
import { EnrolmentsRepository, type FoundEnrolment } from './enrolments.repository.js';

export interface EnrolledDevice extends Made<DeviceEntity> {
  readonly credential: string;
}

/**
 * Makes a device of a phone that has a code. The phone brings its own secret, so that it can send the request again
 * when the answer was lost: a secret made here would be lost with the answer, and the code used up.
 */
@Injectable()
export class EnrolDevice {
  constructor(
    private readonly db: TenantDatabase,
    private readonly enrolments: EnrolmentsRepository,
    private readonly devices: DevicesRepository,
    private readonly people: PeopleService,
    private readonly sessions: DeviceSessions,
    private readonly limits: CodeLimits,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem 401, alike for every code that is not good; 429 after many of those from one address */
  async execute(body: DeviceBody, address: string): Promise<EnrolledDevice> {
    await this.limits.begin(address);
    const codeHash = hashEnrolmentCode(body.code);
    const found = codeHash === null ? null : await this.enrolments.findByCode(codeHash);
    const made = found === null ? null : await this.redeem(found, body);
    if (found === null || made === null) {
      throw new Problem('enrolment-refused', 'The code is mistyped, was used, or has expired: it is good for one phone and ten minutes, and only while the one who made it stays signed in. Ask for a new one.');
    }
    await this.limits.succeeded(address);
    const secret = Buffer.from(body.secret, 'base64url');
    return { ...made, credential: encodeSecretToken({ companyId: found.companyId, id: made.row.id, secret }) };
  }

  private async redeem({ companyId, id, personId }: FoundEnrolment, body: DeviceBody): Promise<Made<DeviceEntity> | null> {
    const actor: Actor = { companyId, personId, role: 'crew', sessionId: null };
    return this.db.write(actor, async () => {
      const enrolment = await this.enrolments.lock(actor, id);
      if (enrolment === null) return null;
      const before = await this.devices.ofEnrolment(actor, id);
      if (before !== null) return requestDigest(body).equals(before.createDigest ?? Buffer.alloc(0)) ? { row: before, created: false } : null;
      // Asked again now: a role may have changed, or the phone that showed the code may have been reported lost.
      const maker = await this.sessions.signedIn(companyId, enrolment.sessionId);
      const person = await this.people.find(actor, personId);
      if (enrolment.expiresAt <= this.clock.now() || maker === null || !person.active || !mayVouchFor(maker, person)) return null;
      const secretHash = hashSecret(Buffer.from(body.secret, 'base64url'));
      return this.devices.create(actor, body, { enrolmentId: id, personId, enrolledBy: maker.personId, name: body.name, secretHash });
    });
  }
}
