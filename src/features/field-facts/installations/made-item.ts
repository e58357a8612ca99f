import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { entityRows } from '../../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { EquipmentAttachments } from '../../attachments/index.js';
import { EquipmentService } from '../../equipment/index.js';
import { SurveysService } from '../../surveys/index.js';
import { InstallationEntity, type ItemStaysBecause } from './installation.entity.js';

type Recorded = Pick<InstallationEntity, 'id' | 'equipmentId' | 'featureId' | 'serialNumber'>;

/** The item of equipment that records of installations made. */
@Injectable()
export class MadeItem {
  constructor(
    private readonly db: TenantDatabase,
    private readonly equipment: EquipmentService,
    private readonly surveys: SurveysService,
    private readonly attachments: EquipmentAttachments,
  ) {}

  /**
   * Takes the item out whose record is being voided, in the same transaction, if it is there by this record alone.
   * @param day the day that it is taken out on
   * @returns why it stays; null when it is out, or is another's to take out: of a record that counts, or of the office
   */
  async takeOut(actor: Actor, record: Recorded, day: string): Promise<ItemStaysBecause | null> {
    // Nobody may take down the same pump in this moment and be given the item that is about to go.
    if (record.featureId !== null && record.serialNumber !== null) await this.equipment.claimSerialNumber(actor, record.featureId, record.serialNumber);
    const item = await this.equipment.hold(actor, record.equipmentId);
    if (item.removedOn !== null || !(await this.isToGo(actor, record))) return null;
    if (item.version > 1) return 'changed';
    if (await this.isNamed(actor, record)) return 'named';
    await this.equipment.takeOut(actor, item, day);
    return null;
  }

  /** Whether the item came by this record, or by one that is void and left it to this one. */
  private async isToGo(actor: Actor, { id, equipmentId }: Recorded): Promise<boolean> {
    if (id === equipmentId) return true;
    const tail = 'WHERE company_id = $1 AND id = $2 AND voided_at IS NOT NULL';
    return (await this.db.read(actor, (manager) => entityRows(manager, InstallationEntity, tail, [actor.companyId, equipmentId]))).length > 0;
  }

  private async isNamed(actor: Actor, { id, equipmentId }: Recorded): Promise<boolean> {
    const tail = 'WHERE company_id = $1 AND equipment_id = $2 AND id <> $3 AND voided_at IS NULL LIMIT 1';
    const others = await this.db.read(actor, (manager) => entityRows(manager, InstallationEntity, tail, [actor.companyId, equipmentId, id]));
    return others.length > 0 || (await this.surveys.nameEquipment(actor, equipmentId)) || this.attachments.exist(actor, equipmentId);
  }
}
