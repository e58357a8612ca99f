import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { FileStore } from '../../../platform/files/file-store.js';
import { Problem } from '../../../platform/http/problem.js';
import { noSuchReference, stateConflict } from '../../../platform/http/problems.js';
import { CompaniesService } from '../../companies/index.js';
import { processImage, type ProcessedImage } from '../images/process-image.js';
import { sniffed } from '../images/sniff.js';
import type { UploadEntity } from './upload.entity.js';
import { UploadsRepository } from './uploads.repository.js';

/** An upload whose bytes are stored. */
export type FinishedUpload = UploadEntity & { readonly fileSha256: Buffer; readonly fileSize: number; readonly mediaType: string };

/** Looks at a file that is there whole, and stores it under the SHA-256 of what it keeps of it. */
@Injectable()
export class FinishUpload {
  constructor(
    private readonly db: TenantDatabase,
    private readonly uploads: UploadsRepository,
    private readonly files: FileStore,
    private readonly companies: CompaniesService,
  ) {}

  /**
   * May be repeated: the service may have stopped between the last piece and this. What is refused is taken away at
   * once, since more of the same bytes would not make it better.
   * @throws Problem 422 at /uploadId when there is no such upload, 409 when it is not there whole, 460 for other bytes than were
   *   meant, 415 for a type that is not taken, 422 for a file that can't be used
   */
  async execute(actor: Actor, id: string): Promise<FinishedUpload> {
    const upload = await this.uploads.find(actor, id);
    if (upload === null) throw noSuchReference('/uploadId', 'upload of yours');
    if (isFinished(upload)) return upload;
    const bytes = await this.uploads.bytesOf(actor, id);
    if (bytes.length < upload.size) {
      // Another request may have finished it between the two questions, and its pieces are gone.
      const now = await this.uploads.find(actor, id);
      if (now !== null && isFinished(now)) return now;
      throw stateConflict(`${bytes.length} of ${upload.size} bytes of the upload are here. Send the rest first.`, [{ pointer: '/uploadId', detail: 'must be an upload that is there whole' }]);
    }
    try {
      return await this.store(actor, upload, bytes);
    } catch (error) {
      if (error instanceof Problem && error.status < 500) await this.uploads.remove(actor, id);
      throw error;
    }
  }

  private async store(actor: Actor, upload: UploadEntity, bytes: Buffer): Promise<FinishedUpload> {
    if (!createHash('sha256').update(bytes).digest().equals(upload.sha256)) throw new Problem('checksum-mismatch', 'The file that arrived does not have the sha256 of its Upload-Metadata. Send it again, as a new upload.');
    const mediaType = await sniffed(bytes);
    const image = mediaType === 'application/pdf' ? null : await processImage(bytes, mediaType, (await this.companies.current(actor)).keepPhotoLocation);
    return this.db.write(actor, async () => {
      const kept = image?.bytes ?? bytes;
      const file = { fileSha256: await this.files.put(actor, kept, mediaType), fileSize: kept.length, mediaType, ...(await this.imageOf(actor, image)) };
      await this.uploads.finish(actor, upload.id, file);
      return { ...upload, ...file };
    });
  }

  private async imageOf(actor: Actor, image: ProcessedImage | null): Promise<Pick<UploadEntity, 'width' | 'height' | 'thumbnailSha256'>> {
    if (image === null) return { width: null, height: null, thumbnailSha256: null };
    return { width: image.width, height: image.height, thumbnailSha256: await this.files.put(actor, image.thumbnail, 'image/jpeg') };
  }
}

function isFinished(upload: UploadEntity): upload is FinishedUpload {
  return upload.fileSha256 !== null;
}
