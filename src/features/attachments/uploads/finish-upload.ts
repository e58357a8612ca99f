import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { FileStore } from '../../../platform/files/file-store.js';
import { Problem } from '../../../platform/http/problem.js';
import { noSuchReference, stateConflict } from '../../../platform/http/problems.js';
import { FairTurns } from '../../../platform/turns/fair-turns.js';
import { CompaniesService } from '../../companies/index.js';
import { processImage, type ProcessedImage } from '../images/process-image.js';
import { sniffed } from '../images/sniff.js';
import type { UploadEntity } from './upload.entity.js';
import type { MediaType } from './upload-limits.js';
import { UploadsRepository } from './uploads.repository.js';

/** An upload whose bytes are stored. */
export type FinishedUpload = UploadEntity & { readonly fileSha256: Buffer; readonly fileSize: number; readonly mediaType: string };

interface Worked {
  readonly mediaType: MediaType;
  readonly bytes: Buffer;
  readonly image: ProcessedImage | null;
}

/**
 * One file after the other: one of the largest takes up to half a gigabyte while it is worked on, and photos are sent
 * more slowly than that. Some files take minutes, so people take turns: else a hundred of those from one person would
 * keep the photos of every other company for hours.
 */
const turns = new FairTurns(1);

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
   * Not for within a transaction: the work on a photo takes longer than a connection should be held. May be repeated:
   * the service may have stopped between the last piece and this. What is refused is taken away at once, since more of
   * the same bytes would not make it better.
   * @throws Problem as `finished`, 460 for other bytes than were meant, 415 for a type that is not taken, 422 for a file that
   *   can't be used
   */
  async execute(actor: Actor, id: string): Promise<FinishedUpload> {
    const there = await this.uploads.find(actor, id);
    if (there !== null && isFinished(there)) return there;
    return turns.take(`${actor.companyId} ${actor.personId}`, async () => {
      const upload = await this.uploads.find(actor, id);
      if (upload === null || isFinished(upload) || (await this.uploads.received(actor, upload)) < upload.size) return this.finished(actor, id);
      const bytes = await this.uploads.bytesOf(actor, upload);
      // Another instance may have finished it in the meantime, and its pieces are gone.
      if (bytes.length < upload.size) return this.finished(actor, id);
      try {
        return await this.store(actor, upload, await this.worked(actor, upload, bytes));
      } catch (error) {
        if (error instanceof Problem && error.status < 500) await this.uploads.remove(actor, id);
        throw error;
      }
    });
  }

  /** @throws Problem 422 at /uploadId when there is no such upload, 409 when it is not there whole */
  async finished(actor: Actor, id: string): Promise<FinishedUpload> {
    const upload = await this.uploads.find(actor, id);
    if (upload === null) throw noSuchReference('/uploadId', 'upload of yours');
    if (isFinished(upload)) return upload;
    const received = await this.uploads.received(actor, upload);
    throw stateConflict(`${received} of ${upload.size} bytes of the upload are here. Send the rest first.`, [{ pointer: '/uploadId', detail: 'must be an upload that is there whole' }]);
  }

  /** What is kept of the file. */
  private async worked(actor: Actor, upload: UploadEntity, bytes: Buffer): Promise<Worked> {
    if (!createHash('sha256').update(bytes).digest().equals(upload.sha256)) throw new Problem('checksum-mismatch', 'The file that arrived does not have the sha256 of its Upload-Metadata. Send it again, as a new upload.');
    const mediaType = await sniffed(bytes);
    if (mediaType === 'application/pdf') return { mediaType, bytes, image: null };
    const image = await processImage(bytes, mediaType, (await this.companies.current(actor)).keepPhotoLocation);
    return { mediaType: image.mediaType, bytes: image.bytes, image };
  }

  private store(actor: Actor, upload: UploadEntity, { mediaType, bytes, image }: Worked): Promise<FinishedUpload> {
    return this.db.write(actor, async () => {
      const file = { fileSha256: await this.files.put(actor, bytes, mediaType), fileSize: bytes.length, mediaType, ...(await this.imageOf(actor, image)) };
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
