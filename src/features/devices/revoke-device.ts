import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { notFound } from '../../platform/http/problems.js';
import { PeopleService } from '../people/index.js';
import { DeviceSessions } from '../sessions/index.js';
import type { DeviceEntity } from './device.entity.js';
import { requireMaySee, requireMayVouchFor } from './devices.policy.js';
import { DevicesRepository } from './devices.repository.js';
import { EnrolmentsRepository } from './enrolments.repository.js';

type Revocation = (actor: Actor, deviceId: string) => Promise<void>;

/** Shuts devices out for good: their sessions end, and their credentials open no other. */
@Injectable()
export class RevokeDevice {
  private readonly revocations: Revocation[] = [];

  constructor(
    private readonly db: TenantDatabase,
    private readonly devices: DevicesRepository,
    private readonly enrolments: EnrolmentsRepository,
    private readonly people: PeopleService,
    private readonly sessions: DeviceSessions,
    private readonly clock: Clock,
  ) {}

  /** What another slice does, in the same transaction, with what it keeps for a device that is shut out. */
  whenRevoked(revocation: Revocation): void {
    this.revocations.push(revocation);
  }

  /** One that was revoked before stays as it is. @throws Problem 404 or 403 */
  async execute(actor: Actor, id: string, because: string): Promise<DeviceEntity> {
    const { row, ended } = await this.db.write(actor, async () => {
      const device = await this.devices.lock(actor, id);
      if (device === null) throw notFound('device');
      requireMaySee(actor, device);
      requireMayVouchFor(actor, await this.people.find(actor, device.personId), null);
      return device.revokedAt === null ? this.shutOut(actor, device, because) : { row: device, ended: [] };
    });
    this.sessions.forget(actor.companyId, ended);
    return row;
  }

  /** All devices of a person, and the codes for more. Joins the transaction of the caller. */
  async executeForAllOf(actor: Actor, personId: string, because: string): Promise<void> {
    await this.db.write(actor, async () => {
      await this.enrolments.expireAllOf(actor, personId, this.clock.now());
      for (const device of await this.devices.lockStandingOf(actor, personId)) await this.shutOut(actor, device, because);
    });
  }

  private async shutOut(actor: Actor, device: DeviceEntity, because: string): Promise<{ row: DeviceEntity; ended: readonly string[] }> {
    const row = await this.devices.revoke(actor, device, this.clock.now(), because);
    for (const revocation of this.revocations) await revocation(actor, device.id);
    return { row, ended: await this.sessions.end(actor, device.id, 'the device was revoked') };
  }
}
