import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { FileStore, type StoredBytes } from '../../platform/files/file-store.js';
import type { Page } from '../../platform/http/lists.js';
import { noSuchReference, notFound } from '../../platform/http/problems.js';
import type { AttachmentEntity } from './attachment.entity.js';
import type { AttachmentsQuery } from './attachments.dto.js';
import { requireMayOpen, requireMaySee, requireMayVoid } from './attachments.policy.js';
import { AttachmentsRepository } from './attachments.repository.js';

/** Bytes of an attachment, read only as far as they are asked for. */
export interface OpenFile extends StoredBytes {
  readonly sha256: string;
  readonly mediaType: string;
}

/** The photos, receipts and documents of the company. */
@Injectable()
export class AttachmentsService {
  constructor(
    private readonly db: TenantDatabase,
    private readonly attachments: AttachmentsRepository,
    private readonly files: FileStore,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem 404, alike for one of another company, one that shows prices to crew, and none */
  async find(actor: Actor, id: string): Promise<AttachmentEntity> {
    const row = await this.attachments.store.find(actor, id);
    requireMaySee(actor, row);
    return row;
  }

  list(actor: Actor, query: AttachmentsQuery): Promise<Page<AttachmentEntity>> {
    return this.attachments.list(actor, query);
  }

  /**
   * For slices that keep ids of attachments; one statement.
   * @param pointer of the list in the request: `/photoIds`
   * @throws Problem 422 at the first that is not there
   */
  async requireThere(actor: Actor, ids: readonly string[], pointer: string): Promise<void> {
    const there = new Set((await this.attachments.findMany(actor, ids)).map(({ id }) => id));
    const missing = ids.findIndex((id) => !there.has(id.toLowerCase()));
    if (missing >= 0) throw noSuchReference(`${pointer}/${missing}`, 'attachment');
  }

  /** @throws Problem 404 also for a voided one, except for owner and estimator */
  async content(actor: Actor, id: string): Promise<OpenFile> {
    const row = await this.openable(actor, id);
    return this.file(actor, row.fileSha256, row.mediaType);
  }

  /** @throws Problem 404 as the content, and for what is no image */
  async thumbnail(actor: Actor, id: string): Promise<OpenFile> {
    const { thumbnailSha256 } = await this.openable(actor, id);
    if (thumbnailSha256 === null) throw notFound('thumbnail');
    return this.file(actor, thumbnailSha256, 'image/jpeg');
  }

  /** Repeated, it answers with the first reason. @throws Problem 404, or 403 for crew and what somebody else attached */
  void(actor: Actor, id: string, reason: string): Promise<AttachmentEntity> {
    return this.db.write(actor, async () => {
      const row = await this.attachments.store.lock(actor, id);
      requireMaySee(actor, row);
      requireMayVoid(actor, row);
      if (row.voidedAt !== null) return row;
      return this.attachments.store.update(actor, id, row.version, { voidedAt: this.clock.now(), voidReason: reason });
    });
  }

  private async openable(actor: Actor, id: string): Promise<AttachmentEntity> {
    const row = await this.attachments.store.find(actor, id);
    requireMayOpen(actor, row);
    return row;
  }

  private async file(actor: Actor, sha256: Buffer, mediaType: string): Promise<OpenFile> {
    return { sha256: sha256.toString('hex'), mediaType, ...(await this.files.open(actor, sha256)) };
  }
}
