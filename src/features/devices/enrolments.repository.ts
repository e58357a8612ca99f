import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Actor } from '../../platform/auth/actor.js';
import { entityRows } from '../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { DeviceEnrolmentEntity } from './device-enrolment.entity.js';

export interface FoundEnrolment {
  readonly companyId: string;
  readonly id: string;
  readonly personId: string;
}

/** All SQL of the codes' table. */
@Injectable()
export class EnrolmentsRepository {
  constructor(
    private readonly db: TenantDatabase,
    private readonly dataSource: DataSource,
  ) {}

  /** Of any company: a phone with a code does not know whose it is. */
  async findByCode(codeHash: Buffer): Promise<FoundEnrolment | null> {
    const [row] = await this.dataSource.query<FoundEnrolment[]>('SELECT company_id AS "companyId", id, person_id AS "personId" FROM find_device_enrolment($1)', [codeHash]);
    return row ?? null;
  }

  async insert(actor: Actor, row: Omit<DeviceEnrolmentEntity, 'companyId' | 'createdAt'>): Promise<void> {
    await this.db.write(actor, (manager) => manager.insert(DeviceEnrolmentEntity, { ...row, companyId: actor.companyId }));
  }

  async find(actor: Actor, id: string): Promise<DeviceEnrolmentEntity | null> {
    return this.db.read(actor, async (manager) => (await entityRows(manager, DeviceEnrolmentEntity, 'WHERE company_id = $1 AND id = $2', [actor.companyId, id]))[0] ?? null);
  }

  /** Locked: of two phones with the same code, the second sees that it was used. */
  async lock(actor: Actor, id: string): Promise<DeviceEnrolmentEntity | null> {
    return this.db.write(actor, async (manager) => (await entityRows(manager, DeviceEnrolmentEntity, 'WHERE company_id = $1 AND id = $2 FOR UPDATE', [actor.companyId, id]))[0] ?? null);
  }

  /** Makes the codes of a person expire that are still good. */
  async expireAllOf(actor: Actor, personId: string, at: Date): Promise<void> {
    await this.db.write(actor, (manager) => manager.query('UPDATE device_enrolment SET expires_at = $3 WHERE company_id = $1 AND person_id = $2 AND expires_at > $3', [actor.companyId, personId, at]));
  }
}
