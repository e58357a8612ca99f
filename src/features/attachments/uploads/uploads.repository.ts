import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { entityRows } from '../../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { FileStore } from '../../../platform/files/file-store.js';
import { UploadEntity } from './upload.entity.js';
import { UPLOAD_DAYS } from './upload-limits.js';

export type UploadedFile = Pick<UploadEntity, 'fileSha256' | 'fileSize' | 'mediaType' | 'width' | 'height' | 'thumbnailSha256'>;

const PIECES_AT_ONCE = 8;
const UPLOAD_MS = UPLOAD_DAYS * 24 * 60 * 60 * 1000;

/** All SQL of uploads. Each person finds only their own, and none that has expired. */
@Injectable()
export class UploadsRepository {
  constructor(
    private readonly db: TenantDatabase,
    private readonly files: FileStore,
    private readonly clock: Clock,
  ) {}

  find(actor: Actor, id: string): Promise<UploadEntity | null> {
    return this.findBy(actor, 'id = $4', [id]);
  }

  /** An upload of the same bytes that the person began before: a phone that lost its address goes on with it. */
  findSame(actor: Actor, sha256: Buffer, size: number): Promise<UploadEntity | null> {
    return this.findBy(actor, 'sha256 = $4 AND size = $5 ORDER BY id LIMIT 1', [sha256, size]);
  }

  async insert(actor: Actor, upload: Pick<UploadEntity, 'id' | 'personId' | 'size' | 'sha256' | 'metadata'>): Promise<void> {
    await this.db.write(actor, (manager) => manager.insert(UploadEntity, { ...upload, companyId: actor.companyId, createdAt: this.clock.now() }));
  }

  /** How many uploads of the person are not there whole, and how many bytes are attached to nothing, or will be. */
  async waiting(actor: Actor): Promise<{ open: number; bytes: number }> {
    const [row] = await this.db.read(actor, (manager) =>
      manager.query<{ open: number; bytes: number }[]>(
        `SELECT count(*) FILTER (WHERE file_sha256 IS NULL)::int AS open, coalesce(sum(size), 0)::float8 AS bytes FROM upload u WHERE company_id = $1 AND person_id = $2
         AND NOT EXISTS (SELECT FROM attachment a WHERE a.company_id = u.company_id AND a.file_sha256 = u.file_sha256)`,
        [actor.companyId, actor.personId],
      ),
    );
    return row ?? { open: 0, bytes: 0 };
  }

  /** How many bytes of the upload are there. */
  async received(actor: Actor, upload: UploadEntity): Promise<number> {
    if (upload.fileSha256 !== null) return upload.size;
    const [last] = await this.db.read(actor, (manager) =>
      manager.query<{ end: number }[]>('SELECT starts_at + length(bytes) AS "end" FROM upload_piece WHERE company_id = $1 AND upload_id = $2 ORDER BY starts_at DESC LIMIT 1', [actor.companyId, upload.id]),
    );
    return last?.end ?? 0;
  }

  /** Keeps the next bytes for good. @returns whether the place was still free */
  async append(actor: Actor, id: string, startsAt: number, bytes: Buffer): Promise<boolean> {
    const kept = await this.db.write(actor, (manager) =>
      manager.query<object[]>('INSERT INTO upload_piece (company_id, upload_id, starts_at, bytes) VALUES ($1, $2, $3, $4) ON CONFLICT ON CONSTRAINT pk_upload_piece DO NOTHING RETURNING starts_at', [actor.companyId, id, startsAt, bytes]),
    );
    return kept.length === 1;
  }

  /** Takes back what came after this place. */
  async cutAt(actor: Actor, id: string, startsAt: number): Promise<void> {
    await this.db.write(actor, (manager) => manager.query('DELETE FROM upload_piece WHERE company_id = $1 AND upload_id = $2 AND starts_at >= $3', [actor.companyId, id, startsAt]));
  }

  /** What is there of the file. A few pieces at once: the driver holds each answer three times over while it reads it. */
  async bytesOf(actor: Actor, { id, size }: UploadEntity): Promise<Buffer> {
    const whole = Buffer.allocUnsafe(size);
    let at = 0;
    while (at < size) {
      const pieces = await this.db.read(actor, (manager) =>
        manager.query<{ bytes: Buffer }[]>('SELECT bytes FROM upload_piece WHERE company_id = $1 AND upload_id = $2 AND starts_at >= $3 ORDER BY starts_at LIMIT $4', [actor.companyId, id, at, PIECES_AT_ONCE]),
      );
      if (pieces.length === 0) break;
      for (const { bytes } of pieces) at += bytes.copy(whole, at);
    }
    return whole.subarray(0, at);
  }

  /** Says where the file went; its pieces are not needed any more. */
  async finish(actor: Actor, id: string, file: UploadedFile): Promise<void> {
    await this.db.write(actor, async (manager) => {
      await manager.update(UploadEntity, { companyId: actor.companyId, id }, file);
      await this.cutAt(actor, id, 0);
    });
  }

  /** Takes the upload away, and its file unless that was attached. */
  remove(actor: Actor, id: string): Promise<void> {
    return this.removeWhere(actor, 'id = $2', [id]);
  }

  /** Takes away what nobody finished or attached in time, a few at once. */
  removeExpired(actor: Actor): Promise<void> {
    return this.removeWhere(actor, 'id IN (SELECT id FROM upload WHERE company_id = $1 AND created_at < $2 ORDER BY created_at LIMIT 20 FOR UPDATE SKIP LOCKED)', [this.oldest()]);
  }

  private async removeWhere(actor: Actor, condition: string, values: readonly unknown[]): Promise<void> {
    const [rows] = await this.db.write(actor, (manager) =>
      manager.query<[{ file: Buffer | null; thumbnail: Buffer | null }[], number]>(`DELETE FROM upload WHERE company_id = $1 AND ${condition} RETURNING file_sha256 AS file, thumbnail_sha256 AS thumbnail`, [actor.companyId, ...values]),
    );
    await this.files.discard(actor, rows.flatMap(({ file, thumbnail }) => [file ?? [], thumbnail ?? []].flat()));
  }

  private async findBy(actor: Actor, condition: string, values: readonly unknown[]): Promise<UploadEntity | null> {
    const [row] = await this.db.read(actor, (manager) =>
      entityRows(manager, UploadEntity, `WHERE company_id = $1 AND person_id = $2 AND created_at >= $3 AND ${condition}`, [actor.companyId, actor.personId, this.oldest(), ...values]),
    );
    return row ?? null;
  }

  private oldest(): Date {
    return new Date(this.clock.now().getTime() - UPLOAD_MS);
  }
}
