import { Injectable } from '@nestjs/common';
import type { QueryDeepPartialEntity } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../platform/auth/actor.js';
import { entityPage, entityRows } from '../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { ListQuery, Page } from '../../platform/http/lists.js';
import { notFound } from '../../platform/http/problems.js';
import { ResourceStore } from '../../platform/resources/resource-store.js';
import { QuoteLineEntity } from './quote-line.entity.js';
import { QuoteRevisionEntity } from './quote-revision.entity.js';
import { QuoteEntity } from './quote.entity.js';

/** A line as it was priced, before it has its place. */
export type NewLine = Omit<QuoteLineEntity, 'companyId' | 'id' | 'revisionId' | 'position'>;
export type RevisionValues = Partial<Omit<QuoteRevisionEntity, 'companyId' | 'id' | 'quoteId' | 'createdAt'>>;
export type Place = Pick<QuoteEntity, 'customerId' | 'siteId' | 'featureId'>;

/** A quote with one of its revisions. */
export interface QuoteSight {
  readonly quote: QuoteEntity;
  readonly revision: QuoteRevisionEntity;
  readonly lines: readonly QuoteLineEntity[];
}

@Injectable()
export class QuotesRepository {
  readonly store: ResourceStore<QuoteEntity>;

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, QuoteEntity, 'quote');
  }

  /** @throws Problem 404 */
  async revision(actor: Actor, quoteId: string, revision: number): Promise<QuoteRevisionEntity> {
    const row = await this.db.read(actor, (manager) => manager.findOne(QuoteRevisionEntity, { where: { companyId: actor.companyId, quoteId, revision } }));
    if (row === null) throw notFound('revision of the quote');
    return row;
  }

  /** The quote with the revision, the current one unless told. @throws Problem 404 */
  async sight(actor: Actor, quote: QuoteEntity, number = quote.revision): Promise<QuoteSight> {
    const revision = await this.revision(actor, quote.id, number);
    const lines = await this.db.read(actor, (manager) =>
      entityRows(manager, QuoteLineEntity, 'WHERE company_id = $1 AND revision_id = $2 ORDER BY position', [actor.companyId, revision.id]),
    );
    return { quote, revision, lines };
  }

  /** The revisions of a quote, newest first. */
  async listRevisions(actor: Actor, quoteId: string, query: ListQuery): Promise<Page<QuoteRevisionEntity>> {
    return this.db.read(actor, (manager) => entityPage(manager, QuoteRevisionEntity, query, { companyId: actor.companyId, quoteId }));
  }

  async addRevision(actor: Actor, quoteId: string, values: RevisionValues, lines: readonly NewLine[]): Promise<void> {
    const id = uuidv7();
    await this.db.write(actor, (manager) =>
      manager.insert(QuoteRevisionEntity, { ...values, companyId: actor.companyId, id, quoteId }),
    );
    await this.addLines(actor, id, lines);
  }

  /** Writes the columns that are given. What an issued revision may still take, its trigger decides. */
  async updateRevision(actor: Actor, id: string, values: RevisionValues): Promise<void> {
    await this.db.write(actor, (manager) =>
      manager.update(QuoteRevisionEntity, { companyId: actor.companyId, id }, values as QueryDeepPartialEntity<QuoteRevisionEntity>),
    );
  }

  /** The lines of a draft that was priced anew. */
  async replaceLines(actor: Actor, revisionId: string, lines: readonly NewLine[]): Promise<void> {
    await this.db.write(actor, (manager) => manager.delete(QuoteLineEntity, { companyId: actor.companyId, revisionId }));
    await this.addLines(actor, revisionId, lines);
  }

  private async addLines(actor: Actor, revisionId: string, lines: readonly NewLine[]): Promise<void> {
    if (lines.length === 0) return;
    const rows = lines.map((line, position) => ({ ...line, companyId: actor.companyId, id: uuidv7(), revisionId, position }));
    await this.db.write(actor, (manager) => manager.insert(QuoteLineEntity, rows as QueryDeepPartialEntity<QuoteLineEntity>[]));
  }
}
