import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { type Page, pageOf } from '../../platform/http/lists.js';
import type { QuoteListQuery } from './quote-queries.dto.js';
import { QuoteRevisionEntity } from './quote-revision.entity.js';
import { SUMMARY_COLUMNS, type SummaryOfRevision } from './quote.mapper.js';
import { QuoteEntity } from './quote.entity.js';

export type QuoteRow = QuoteEntity & { readonly current: SummaryOfRevision };

/** The list of quotes with their current revisions, newest first, in one statement and without the lines. */
@Injectable()
export class QuoteList {
  constructor(private readonly db: TenantDatabase) {}

  async page(actor: Actor, query: QuoteListQuery): Promise<Page<QuoteRow>> {
    return this.db.read(actor, async (manager) => {
      const select = manager
        .createQueryBuilder(QuoteEntity, 'q')
        .innerJoinAndMapOne('q.current', QuoteRevisionEntity, 'r', 'r.companyId = q.companyId AND r.quoteId = q.id AND r.revision = q.revision')
        .select(['q', 'r.companyId', ...SUMMARY_COLUMNS.map((column) => `r.${column}`)])
        .where('q.companyId = :companyId', { companyId: actor.companyId });
      if (query.customerId !== undefined) select.andWhere('q.customerId = :customerId', { customerId: query.customerId });
      if (query.state !== undefined) select.andWhere('r.state = :state', { state: query.state });
      if (query.cursor) select.andWhere('q.id < :cursor', { cursor: query.cursor });
      const rows = await select.orderBy('q.id', 'DESC').limit(query.limit + 1).getMany();
      return pageOf(rows as QuoteRow[], query.limit);
    });
  }
}
