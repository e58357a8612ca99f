import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { decodeSecretToken, sameSecret, type SecretToken } from '../../platform/auth/secret-token.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { Problem } from '../../platform/http/problem.js';
import { PeopleService } from '../people/index.js';
import { deviceRevoked, DeviceSessions, type SessionView } from '../sessions/index.js';
import { DevicesRepository } from './devices.repository.js';

/** Exchanges the credential of a device for a session of its person. */
@Injectable()
export class SignInDevice {
  constructor(
    private readonly db: TenantDatabase,
    private readonly devices: DevicesRepository,
    private readonly people: PeopleService,
    private readonly sessions: DeviceSessions,
  ) {}

  /** @throws Problem 401: device-unknown, or device-revoked to who holds the right secret */
  async execute(credential: string): Promise<SessionView> {
    const parts = decodeSecretToken(credential);
    const opened = parts === null ? null : await this.open(parts);
    if (parts === null || opened === null) throw new Problem('device-unknown', 'The credential is none of a device here. Enrol the device with a new code.');
    this.sessions.forget(parts.companyId, opened.ended);
    return opened.session;
  }

  private async open({ companyId, id, secret }: SecretToken): Promise<{ session: SessionView; ended: readonly string[] } | null> {
    const nobody: Actor = { companyId, personId: null, role: 'crew', sessionId: null };
    return this.db.write(nobody, async () => {
      // Locked, so that a revocation at the same moment finds the session that is opened here, or this finds it revoked.
      const device = await this.devices.lock(nobody, id);
      if (device === null || !sameSecret(secret, device.secretHash)) return null;
      const { active } = await this.people.find(nobody, device.personId);
      if (device.revokedAt !== null || !active) throw deviceRevoked();
      return this.sessions.start({ ...nobody, personId: device.personId }, device);
    });
  }
}
