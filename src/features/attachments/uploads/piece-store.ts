import type { Readable } from 'node:stream';
import { DataStore, ERRORS, Upload } from '@tus/server';
import type { Actor } from '../../../platform/auth/actor.js';
import { Problem } from '../../../platform/http/problem.js';
import type { PieceChecksum } from './piece-checksum.js';
import { UPLOAD_DAYS } from './upload-limits.js';
import { offsetConflict } from './upload-problems.js';
import type { UploadEntity } from './upload.entity.js';
import type { UploadsRepository } from './uploads.repository.js';

/** Bytes are kept in pieces of about this size: what a lost connection costs at most, beside what was on the wire. */
const PIECE_BYTES = 256 * 1024;

/**
 * Where the protocol's library keeps the bytes of one request's upload: in the database, under the actor's company.
 * Files beside the service would be out of reach of another instance, and of row-level security.
 */
export class PieceStore extends DataStore {
  private resumes = false;
  override extensions = ['creation', 'creation-with-upload', 'termination', 'expiration', 'checksum'];

  /** @param begin makes the upload, or says that it goes on with one that was begun before */
  constructor(
    private readonly actor: Actor,
    private readonly uploads: UploadsRepository,
    private readonly checksum: PieceChecksum | null,
    private readonly begin: (upload: Upload) => Promise<{ resumes: boolean }>,
  ) {
    super();
  }

  override async create(upload: Upload): Promise<Upload> {
    this.resumes = (await this.begin(upload)).resumes;
    return upload;
  }

  override async getUpload(id: string): Promise<Upload> {
    const upload = await this.find(id);
    const offset = await this.uploads.received(this.actor, upload);
    return new Upload({ id, size: upload.size, offset, metadata: upload.metadata, creation_date: upload.createdAt.toISOString() });
  }

  /** @returns where the upload stands afterwards */
  override async write(stream: Readable, id: string, offset: number): Promise<number> {
    const received = await this.uploads.received(this.actor, await this.find(id));
    if (!this.resumes && received !== offset) throw offsetConflict(received);
    let at = received;
    // A creation that is sent again begins with bytes that are here already.
    let known = received - offset;
    let held: Buffer[] = [];
    let heldBytes = 0;
    const keep = async (): Promise<void> => {
      if (heldBytes > 0 && !(await this.uploads.append(this.actor, id, at, Buffer.concat(held)))) throw offsetConflict(at);
      at += heldBytes;
      [held, heldBytes] = [[], 0];
    };
    let lost: unknown = null;
    try {
      for await (const chunk of stream as AsyncIterable<Buffer>) {
        this.checksum?.update(chunk);
        const fresh = chunk.subarray(Math.min(known, chunk.length));
        known -= chunk.length - fresh.length;
        held.push(fresh);
        heldBytes += fresh.length;
        if (heldBytes >= PIECE_BYTES) await keep();
      }
    } catch (error) {
      if (error instanceof Problem) throw error;
      lost = error;
    }
    // What came before the connection was lost is kept: that is what the protocol is for.
    await keep();
    if (this.checksum !== null && !this.checksum.matches()) {
      await this.uploads.cutAt(this.actor, id, received);
      throw new Problem('checksum-mismatch', 'The bytes that arrived do not have the Upload-Checksum. They were not kept; send them again.');
    }
    if (lost !== null) throw lost as Error;
    return at;
  }

  override async remove(id: string): Promise<void> {
    await this.find(id);
    await this.uploads.remove(this.actor, id);
  }

  override getExpiration(): number {
    return UPLOAD_DAYS * 24 * 60 * 60 * 1000;
  }

  private async find(id: string): Promise<UploadEntity> {
    const upload = await this.uploads.find(this.actor, id);
    // The library's own errors are plain objects with a status and a line of text.
    if (upload === null) throw Object.assign(new Error(ERRORS.FILE_NOT_FOUND.body), ERRORS.FILE_NOT_FOUND);
    return upload;
  }
}
