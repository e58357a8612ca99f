import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { entityRows } from '../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { ListQuery, Page } from '../../platform/http/lists.js';
import { type Made, ResourceStore } from '../../platform/resources/resource-store.js';
import { DeviceEntity } from './device.entity.js';

type NewDevice = Pick<DeviceEntity, 'enrolmentId' | 'personId' | 'enrolledBy' | 'name' | 'secretHash'>;

/** All SQL of the devices' table, but for when a device was last seen: the session gate writes that. */
@Injectable()
export class DevicesRepository {
  private readonly store: ResourceStore<DeviceEntity>;

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, DeviceEntity, 'device');
  }

  /** @throws Problem 409 when the id was used for another device */
  create(actor: Actor, request: { id?: string | null }, row: NewDevice): Promise<Made<DeviceEntity>> {
    return this.store.create(actor, request, row);
  }

  /** @throws Problem 404 */
  find(actor: Actor, id: string): Promise<DeviceEntity> {
    return this.store.find(actor, id);
  }

  list(actor: Actor, query: ListQuery, personId: string | undefined): Promise<Page<DeviceEntity>> {
    return this.store.list(actor, query, { personId });
  }

  /** The device that used a code. */
  async ofEnrolment(actor: Actor, enrolmentId: string): Promise<DeviceEntity | null> {
    return this.db.read(actor, async (manager) => (await entityRows(manager, DeviceEntity, 'WHERE company_id = $1 AND enrolment_id = $2', [actor.companyId, enrolmentId]))[0] ?? null);
  }

  async lock(actor: Actor, id: string): Promise<DeviceEntity | null> {
    return this.db.write(actor, async (manager) => (await entityRows(manager, DeviceEntity, 'WHERE company_id = $1 AND id = $2 FOR UPDATE', [actor.companyId, id]))[0] ?? null);
  }

  /** The devices of a person that are still let in, locked. */
  async lockStandingOf(actor: Actor, personId: string): Promise<DeviceEntity[]> {
    return this.db.write(actor, (manager) => entityRows(manager, DeviceEntity, 'WHERE company_id = $1 AND person_id = $2 AND revoked_at IS NULL ORDER BY id FOR UPDATE', [actor.companyId, personId]));
  }

  rename(actor: Actor, row: DeviceEntity, name: string): Promise<DeviceEntity> {
    return this.store.update(actor, row.id, row.version, { name });
  }

  async revoke(actor: Actor, row: DeviceEntity, at: Date, because: string): Promise<DeviceEntity> {
    return this.store.update(actor, row.id, row.version, { revokedAt: at, revokedBecause: because });
  }
}
