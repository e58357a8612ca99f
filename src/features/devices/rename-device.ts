import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { patched } from '../../platform/http/merge-patch.js';
import { notFound, staleVersion } from '../../platform/http/problems.js';
import { PeopleService } from '../people/index.js';
import type { DeviceEntity } from './device.entity.js';
import { DeviceNameBody } from './devices.dto.js';
import { requireMaySee, requireMayVouchFor } from './devices.policy.js';
import { DevicesRepository } from './devices.repository.js';

/** Gives a device another name; one that is shut out too, since the list keeps it. */
@Injectable()
export class RenameDevice {
  constructor(
    private readonly db: TenantDatabase,
    private readonly devices: DevicesRepository,
    private readonly people: PeopleService,
  ) {}

  /** Applies a merge patch. @throws Problem 400, 403, 404, 412 for a stale version */
  execute(actor: Actor, id: string, version: number, patch: unknown): Promise<DeviceEntity> {
    return this.db.write(actor, async () => {
      const device = await this.devices.lock(actor, id);
      if (device === null) throw notFound('device');
      requireMaySee(actor, device);
      requireMayVouchFor(actor, await this.people.find(actor, device.personId), null);
      if (device.version !== version) throw staleVersion('device', device.version);
      const { name } = await patched(DeviceNameBody, { name: device.name }, patch);
      return this.devices.rename(actor, device, name);
    });
  }
}
