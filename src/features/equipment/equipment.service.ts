import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import type { Actor } from '../../platform/auth/actor.js';
import { entityRows } from '../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { Page } from '../../platform/http/lists.js';
import { type Made, ResourceStore } from '../../platform/resources/resource-store.js';
import { EquipmentEntity } from './equipment.entity.js';
import { toEquipmentRow } from './equipment.mapper.js';
import type { EquipmentBody, EquipmentListQuery } from './equipment.dto.js';

@Injectable()
export class EquipmentService {
  private readonly store: ResourceStore<EquipmentEntity>;

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, EquipmentEntity, 'piece of equipment');
  }

  async create(actor: Actor, body: EquipmentBody): Promise<Made<EquipmentEntity>> {
    return this.store.create(actor, body, toEquipmentRow(body));
  }

  /** @throws Problem 404, alike for one of another company and for none */
  find(actor: Actor, id: string): Promise<EquipmentEntity> {
    return this.store.find(actor, id);
  }

  /** The pieces with these ids that there are, by id in lower case, in one query. */
  async findMany(actor: Actor, ids: readonly string[]): Promise<Map<string, EquipmentEntity>> {
    if (ids.length === 0) return new Map();
    const rows = await this.db.read(actor, (manager) => manager.find(EquipmentEntity, { where: { companyId: actor.companyId, id: In([...new Set(ids)]) } }));
    return new Map(rows.map((row) => [row.id, row]));
  }

  /**
   * The piece in place at the feature with this number on its plate, the one entered last if there are several. Until
   * the transaction ends nobody else gets an answer for this number: two who take down one pump at once make one item.
   */
  async claimSerialNumber(actor: Actor, featureId: string, serialNumber: string): Promise<EquipmentEntity | null> {
    const tail = 'WHERE company_id = $1 AND feature_id = $2 AND serial_number = $3 AND removed_on IS NULL ORDER BY id DESC LIMIT 1';
    return this.db.write(actor, async (manager) => {
      await manager.query('SELECT pg_advisory_xact_lock(hashtextextended($1, 0))', [`serial-number ${actor.companyId} ${featureId} ${serialNumber}`]);
      const [row] = await entityRows(manager, EquipmentEntity, tail, [actor.companyId, featureId, serialNumber]);
      return row ?? null;
    });
  }

  /** The piece, held until the transaction ends: nobody changes it, or enters a row that refers to it. @throws Problem 404 */
  hold(actor: Actor, id: string): Promise<EquipmentEntity> {
    return this.store.lock(actor, id);
  }

  /** Marks a piece as taken out, on the day or, if that was later, on the day it was installed. @throws Problem 412 */
  takeOut(actor: Actor, { id, version, installedOn }: EquipmentEntity, day: string): Promise<EquipmentEntity> {
    return this.store.update(actor, id, version, { removedOn: installedOn !== null && installedOn > day ? installedOn : day });
  }

  list(actor: Actor, query: EquipmentListQuery): Promise<Page<EquipmentEntity>> {
    return this.store.list(actor, query, { featureId: query.featureId });
  }

  async update(actor: Actor, id: string, version: number, body: EquipmentBody): Promise<EquipmentEntity> {
    return this.store.update(actor, id, version, toEquipmentRow(body));
  }
}
