import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import type { Made } from '../../platform/resources/resource-store.js';
import { AttachFile } from './attach-file.js';
import type { AttachmentEntity } from './attachment.entity.js';
import type { AttachmentBody } from './attachments.dto.js';
import { UploadsRepository } from './uploads/uploads.repository.js';

/** Attaches a file that the service has already, as if the actor had sent it whole. */
@Injectable()
export class AttachBytes {
  constructor(
    private readonly uploads: UploadsRepository,
    private readonly attach: AttachFile,
  ) {}

  /**
   * @param body its `uploadId` is the id that the upload gets
   * @throws Problem as attaching an upload does
   */
  async execute(actor: Actor, bytes: Buffer, body: AttachmentBody): Promise<Made<AttachmentEntity>> {
    if (actor.personId === null) throw new Error('A file is attached by somebody.');
    const sha256 = createHash('sha256').update(bytes).digest();
    await this.uploads.insert(actor, { id: body.uploadId, personId: actor.personId, size: bytes.length, sha256, metadata: {} });
    await this.uploads.append(actor, body.uploadId, 0, bytes);
    return this.attach.execute(actor, body);
  }
}
