import { Injectable } from '@nestjs/common';
import { EVERYONE } from '../../platform/auth/actor.js';
import { Problem } from '../../platform/http/problem.js';
import { MutationKinds } from '../../platform/sync/mutation-kinds.js';
import { SyncedKinds } from '../../platform/sync/synced-kinds.js';
import { AttachFile } from './attach-file.js';
import { AttachmentEntity } from './attachment.entity.js';
import { toAttachmentView } from './attachment.mapper.js';
import { AttachmentBody, AttachmentVoid } from './attachments.dto.js';
import { AttachmentsService } from './attachments.service.js';

/** The jobs that an attachment is of, itself or through their feature. A receipt shows prices and is of none. */
const JOBS = `SELECT j.id FROM job j WHERE j.company_id = t.company_id AND t.kind <> 'receipt' AND (j.id = t.job_id OR j.feature_id = t.feature_id)
  UNION ALL SELECT j.id FROM equipment e JOIN job j ON j.company_id = e.company_id AND j.feature_id = e.feature_id
  WHERE e.company_id = t.company_id AND e.id = t.equipment_id AND t.kind <> 'receipt'`;

// The pieces of equipment as an array: only so does their index go together with the two others.
const ofJob = (job: string): string => `t.kind <> 'receipt' AND (t.job_id = ${job} OR t.feature_id = (SELECT j.feature_id FROM job j WHERE j.id = ${job})
  OR t.equipment_id = ANY (ARRAY(SELECT e.id FROM job j JOIN equipment e ON e.company_id = j.company_id AND e.feature_id = j.feature_id WHERE j.id = ${job})))`;

/** What phones push and pull of attachments; their bytes go by the upload routes. */
@Injectable()
export class SyncAttachments {
  constructor(
    private readonly mutations: MutationKinds,
    private readonly synced: SyncedKinds,
    private readonly attaching: AttachFile,
    private readonly attachments: AttachmentsService,
  ) {}

  register(): void {
    this.mutations.add({
      kind: 'attachment.add',
      roles: EVERYONE,
      body: AttachmentBody,
      prepare: (actor, { body }) => this.attaching.prepare(actor, body).catch(waitForUpload),
      apply: async (actor, { body }) => {
        const { row } = await this.attaching.attach(actor, body).catch(waitForUpload);
        return { entity: 'attachment', id: row.id, version: row.version };
      },
    });
    this.mutations.add({
      kind: 'attachment.void',
      roles: EVERYONE,
      body: AttachmentVoid,
      apply: async (actor, { body: { id, reason } }) => {
        const row = await this.attachments.void(actor, id, reason);
        return { entity: 'attachment', id: row.id, version: row.version };
      },
    });
    this.synced.add({ kind: 'attachment', table: 'attachment', entity: AttachmentEntity, belongsTo: { jobs: JOBS, rowsOf: ofJob }, view: (_actor, rows) => rows.map(toAttachmentView) });
  }
}

/** A phone whose outbox is faster than its photos may send the mutation again: a refusal for good would lose the photo. */
function waitForUpload(error: unknown): never {
  if (error instanceof Problem && error.code === 'state-conflict') throw new Problem('dependency-missing', error.detail, error.errors);
  throw error;
}
