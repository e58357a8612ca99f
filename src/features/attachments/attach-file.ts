import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { toInstant } from '../../platform/clock/device-time.js';
import { invalidInput } from '../../platform/http/problems.js';
import type { Made } from '../../platform/resources/resource-store.js';
import type { AttachmentEntity } from './attachment.entity.js';
import { subjectColumns } from './attachment.mapper.js';
import { AttachmentSubjects } from './attachment-subjects.js';
import type { AttachmentBody } from './attachments.dto.js';
import { requireMayAttachTo } from './attachments.policy.js';
import { AttachmentsRepository } from './attachments.repository.js';
import { FinishUpload } from './uploads/finish-upload.js';

/** Attaches an upload to a thing. One upload may be attached to several. */
@Injectable()
export class AttachFile {
  constructor(
    private readonly attachments: AttachmentsRepository,
    private readonly subjects: AttachmentSubjects,
    private readonly finishing: FinishUpload,
  ) {}

  /** @throws Problem as `prepare` and `attach` */
  async execute(actor: Actor, body: AttachmentBody): Promise<Made<AttachmentEntity>> {
    await this.prepare(actor, body);
    return this.attach(actor, body);
  }

  /** Works on the file, if the service stopped before it did. Not within a transaction. @throws Problem as finishing does */
  async prepare(actor: Actor, body: AttachmentBody): Promise<void> {
    if ((await this.attachments.store.madeBefore(actor, body)) === null) await this.finishing.execute(actor, body.uploadId);
  }

  /**
   * A photo is a fact: it is taken for any job of the company, whoever is on its crew and whatever its state.
   * @throws Problem 403 for a cost and a crew role, 422 at /subject/id, 409 for an id used with another body or an upload that was not finished
   */
  async attach(actor: Actor, body: AttachmentBody): Promise<Made<AttachmentEntity>> {
    // Before all else: a repeated request answers as the first time, though the upload is gone since.
    const before = await this.attachments.store.madeBefore(actor, body);
    if (before !== null) return { row: before, created: false };
    requireMayAttachTo(actor, body.subject);
    await this.subjects.requireThere(actor, body.subject);
    const upload = await this.finishing.finished(actor, body.uploadId);
    if (body.kind === 'photo' && upload.width === null) throw invalidInput([{ pointer: '/kind', detail: `must be receipt or document: the file is ${upload.mediaType}, which is no photo` }]);
    const { personId, fileSha256, fileSize, mediaType, width, height, thumbnailSha256 } = upload;
    return this.attachments.store.create(actor, body, {
      ...subjectColumns(body.subject),
      kind: body.kind,
      caption: body.caption ?? null,
      takenAt: body.takenAt ? toInstant(body.takenAt) : null,
      attachedBy: personId,
      fileSha256, fileSize, mediaType, width, height, thumbnailSha256,
    });
  }
}
