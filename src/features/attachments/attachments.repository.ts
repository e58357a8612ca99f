import { Injectable } from '@nestjs/common';
import { type Actor, seesMoney } from '../../platform/auth/actor.js';
import { entityRows } from '../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { type Page, pageOf } from '../../platform/http/lists.js';
import { ResourceStore } from '../../platform/resources/resource-store.js';
import { AttachmentEntity } from './attachment.entity.js';
import type { AttachmentsQuery } from './attachments.dto.js';

/** All SQL of attachments. */
@Injectable()
export class AttachmentsRepository {
  readonly store: ResourceStore<AttachmentEntity>;

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, AttachmentEntity, 'attachment');
  }

  /** Newest first, without those that the actor may not see. */
  async list(actor: Actor, query: AttachmentsQuery): Promise<Page<AttachmentEntity>> {
    const values: unknown[] = [actor.companyId];
    const conditions = ['company_id = $1'];
    const wanted = { job_id: query.jobId, feature_id: query.featureId, equipment_id: query.equipmentId, cost_id: query.costId };
    for (const [column, id] of Object.entries(wanted)) if (id !== undefined) conditions.push(`${column} = $${values.push(id)}`);
    if (query.cursor) conditions.push(`id < $${values.push(query.cursor)}`);
    if (!seesMoney(actor)) conditions.push(`(kind <> 'receipt' AND cost_id IS NULL OR attached_by = $${values.push(actor.personId)})`);
    const rows = await this.db.read(actor, (manager) => entityRows(manager, AttachmentEntity, `WHERE ${conditions.join(' AND ')} ORDER BY id DESC LIMIT $${values.push(query.limit + 1)}`, values));
    return pageOf(rows, query.limit);
  }

  /** Whether anything that is not void is attached to the piece of equipment. */
  async existOf(actor: Actor, equipmentId: string): Promise<boolean> {
    const rows = await this.db.read(actor, (manager) => entityRows(manager, AttachmentEntity, 'WHERE company_id = $1 AND equipment_id = $2 AND voided_at IS NULL LIMIT 1', [actor.companyId, equipmentId]));
    return rows.length > 0;
  }

  /** Those with these ids that there are, in one statement. */
  findMany(actor: Actor, ids: readonly string[]): Promise<AttachmentEntity[]> {
    return this.db.read(actor, (manager) => entityRows(manager, AttachmentEntity, 'WHERE company_id = $1 AND id = ANY ($2)', [actor.companyId, ids]));
  }
}
