import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../auth/actor.js';
import { databaseFailure } from '../database/database-errors.js';
import { TenantDatabase } from '../database/tenant-database.js';
import { notFound } from '../http/problems.js';
import { StoredFileEntity } from './stored-file.entity.js';

const STILL_REFERENCED = '23503';
/** Of a file that is read in parts. The driver holds each three times over while it reads it. */
const SLICE_BYTES = 512 * 1024;

/** A stored file, of which as much is read as is wanted. */
export interface StoredBytes {
  readonly size: number;
  /** From the first byte to the last, counted from 0, both among them. */
  read(first: number, last: number): AsyncGenerator<Buffer>;
}

/** Keeps the bytes of documents and photos in the database, so that a document and what it documents commit together. */
@Injectable()
export class FileStore {
  constructor(private readonly db: TenantDatabase) {}

  /** Stores the bytes once, however often they come. @returns their SHA-256, by which they are found again */
  async put(actor: Actor, bytes: Buffer, mediaType: string): Promise<Buffer> {
    const sha256 = createHash('sha256').update(bytes).digest();
    await this.db.write(actor, async (manager) => {
      for (let there = false; !there; ) {
        await manager.createQueryBuilder().insert().into(StoredFileEntity).values({ companyId: actor.companyId, sha256, mediaType, bytes }).orIgnore().execute();
        // The same bytes may have been here, and may be taken away before the transaction refers to them.
        const kept = await manager.query<object[]>('SELECT FROM stored_file WHERE company_id = $1 AND sha256 = $2 FOR KEY SHARE', [actor.companyId, sha256]);
        there = kept.length === 1;
      }
    });
    return sha256;
  }

  /** @throws Problem 404 */
  async get(actor: Actor, sha256: Buffer): Promise<StoredFileEntity> {
    const file = await this.db.read(actor, (manager) => manager.findOne(StoredFileEntity, { where: { companyId: actor.companyId, sha256 } }));
    if (file === null) throw notFound('document');
    return file;
  }

  /** For files that may be large: they are read in slices, as fast as somebody takes them. @throws Problem 404 */
  async open(actor: Actor, sha256: Buffer): Promise<StoredBytes> {
    const slice = async (what: string, values: readonly number[]): Promise<Record<string, unknown>> => {
      const [row] = await this.db.read(actor, (manager) => manager.query<Record<string, unknown>[]>(`SELECT ${what} FROM stored_file WHERE company_id = $1 AND sha256 = $2`, [actor.companyId, sha256, ...values]));
      if (row === undefined) throw notFound('document');
      return row;
    };
    const { size } = await slice('octet_length(bytes) AS size', []);
    return {
      size: size as number,
      read: async function* (first, last) {
        for (let at = first; at <= last; at += SLICE_BYTES) {
          const { bytes } = await slice('substring(bytes FROM $3 FOR $4) AS bytes', [at + 1, Math.min(SLICE_BYTES, last + 1 - at)]);
          yield bytes as Buffer;
        }
      },
    };
  }

  /** Takes files away that nothing refers to any more; the references themselves say so. */
  async discard(actor: Actor, names: readonly Buffer[]): Promise<void> {
    for (const sha256 of names) {
      await this.db.write(actor, (manager) => manager.delete(StoredFileEntity, { companyId: actor.companyId, sha256 })).catch((error: unknown) => {
        if (databaseFailure(error)?.code !== STILL_REFERENCED) throw error;
      });
    }
  }
}
