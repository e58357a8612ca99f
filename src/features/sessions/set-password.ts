import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Passwords } from '../../platform/auth/passwords.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { Problem } from '../../platform/http/problem.js';
import { invalidInput } from '../../platform/http/problems.js';
import { PeopleService } from '../people/index.js';
import { AttemptLimits } from './attempt-limits.js';
import { CredentialEntity } from './credential.entity.js';
import type { PasswordBody } from './passwords.dto.js';
import { SessionsRepository } from './sessions.repository.js';

/** Sets a password: one's own with the present one, or as the owner anybody's. All other sessions of the person end. */
@Injectable()
export class SetPassword {
  constructor(
    private readonly db: TenantDatabase,
    private readonly people: PeopleService,
    private readonly passwords: Passwords,
    private readonly sessions: SessionsRepository,
    private readonly limits: AttemptLimits,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem 400 for a wrong present password, 429 after several, 403 for somebody else's unless the owner asks */
  async execute(actor: Actor, personId: string, { password, currentPassword }: PasswordBody): Promise<void> {
    const person = await this.people.find(actor, personId);
    if (personId === actor.personId) await this.requireCurrent(actor, personId, currentPassword);
    else if (actor.role !== 'owner') throw new Problem('not-allowed', 'Only the owner may set the password of somebody else.');
    if (password.toLowerCase().includes(person.email.toLowerCase())) throw invalidInput([{ pointer: '/password', detail: 'must not hold the e-mail address; take another' }]);
    const passwordHash = await this.passwords.hash(password);
    await this.db.write(actor, async (manager) => {
      await manager.upsert(CredentialEntity, { companyId: actor.companyId, id: personId, passwordHash, changedAt: this.clock.now() }, ['companyId', 'id']);
      await this.sessions.revokeAllOf(actor, personId, this.clock.now(), 'the password was changed');
    });
  }

  private async requireCurrent(actor: Actor, personId: string, currentPassword: string | null | undefined): Promise<void> {
    await this.limits.beginProof(personId);
    const there = await this.db.read(actor, (manager) => manager.findOne(CredentialEntity, { where: { companyId: actor.companyId, id: personId } }));
    const right = there !== null && !!currentPassword && (await this.passwords.verify(there.passwordHash, currentPassword));
    if (!right) throw invalidInput([{ pointer: '/currentPassword', detail: 'must be your present password' }]);
    await this.limits.proved(personId);
  }
}
