import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../auth/actor.js';
import { databaseFailure } from '../database/database-errors.js';
import { TenantDatabase } from '../database/tenant-database.js';
import { notFound } from '../http/problems.js';
import { StoredFileEntity } from './stored-file.entity.js';

const STILL_REFERENCED = '23503';

/** Keeps the bytes of documents and photos in the database, so that a document and what it documents commit together. */
@Injectable()
export class FileStore {
  constructor(private readonly db: TenantDatabase) {}

  /** Stores the bytes once, however often they come. @returns their SHA-256, by which they are found again */
  async put(actor: Actor, bytes: Buffer, mediaType: string): Promise<Buffer> {
    const sha256 = createHash('sha256').update(bytes).digest();
    await this.db.write(actor, (manager) =>
      manager.createQueryBuilder().insert().into(StoredFileEntity).values({ companyId: actor.companyId, sha256, mediaType, bytes }).orIgnore().execute(),
    );
    return sha256;
  }

  /** @throws Problem 404 */
  async get(actor: Actor, sha256: Buffer): Promise<StoredFileEntity> {
    const file = await this.db.read(actor, (manager) => manager.findOne(StoredFileEntity, { where: { companyId: actor.companyId, sha256 } }));
    if (file === null) throw notFound('document');
    return file;
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
