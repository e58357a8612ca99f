import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { FileStore } from '../../platform/files/file-store.js';
import type { ListQuery, Page } from '../../platform/http/lists.js';
import { stateConflict } from '../../platform/http/problems.js';
import { acceptedSums } from './accepted-sums.js';
import { QuoteList, type QuoteRow } from './quote-list.js';
import type { QuoteListQuery } from './quote-queries.dto.js';
import type { QuoteLineEntity } from './quote-line.entity.js';
import type { QuoteRevisionEntity } from './quote-revision.entity.js';
import type { QuoteSums } from './quote-sums.js';
import type { QuoteEntity } from './quote.entity.js';
import { type QuoteSight, QuotesRepository } from './quotes.repository.js';
import { linesTaken } from './taken-sections.js';

/** What a customer agreed to; its taxes and amounts are what is billed. */
export interface AcceptedQuote {
  readonly quote: QuoteEntity;
  readonly revision: QuoteRevisionEntity;
  /** Only those taken. */
  readonly lines: readonly QuoteLineEntity[];
  /** The totals of what was taken, which may differ from those of the revision. */
  readonly sums: QuoteSums;
}

/** Reads quotes. */
@Injectable()
export class QuotesService {
  constructor(
    private readonly quotes: QuotesRepository,
    private readonly pages: QuoteList,
    private readonly files: FileStore,
  ) {}

  list(actor: Actor, query: QuoteListQuery): Promise<Page<QuoteRow>> {
    return this.pages.page(actor, query);
  }

  /** The quote with the revision, the current one unless told. @throws Problem 404 */
  async find(actor: Actor, id: string, revision?: number): Promise<QuoteSight> {
    return this.quotes.sight(actor, await this.quotes.store.find(actor, id), revision);
  }

  /** The revisions of a quote, newest first. @throws Problem 404 */
  async listRevisions(actor: Actor, id: string, query: ListQuery): Promise<{ quote: QuoteEntity; page: Page<QuoteRevisionEntity> }> {
    const quote = await this.quotes.store.find(actor, id);
    return { quote, page: await this.quotes.listRevisions(actor, id, query) };
  }

  /**
   * The revision that was accepted, with the lines that were taken in their order and what they come to.
   * @throws Problem 404, or 409 when the quote was not accepted
   */
  async findAccepted(actor: Actor, quoteId: string): Promise<AcceptedQuote> {
    const { quote, revision, lines } = await this.find(actor, quoteId);
    const sums = acceptedSums(revision);
    if (sums === null) throw stateConflict(`The quote ${quote.number} was not accepted.`);
    return { quote, revision, lines: linesTaken(lines, revision.acceptedSections ?? []), sums };
  }

  /**
   * The document of a revision, the current one unless told, byte for byte as it was issued.
   * @returns the bytes and a file name without its ending
   * @throws Problem 404, or 409 for a draft
   */
  async document(actor: Actor, id: string, revision?: number): Promise<{ bytes: Buffer; name: string }> {
    const quote = await this.quotes.store.find(actor, id);
    const row = await this.quotes.revision(actor, id, revision ?? quote.revision);
    if (row.documentSha256 === null) throw stateConflict(`Revision ${row.revision} of the quote ${quote.number} is a draft and has no document. Issue it first.`);
    const { bytes } = await this.files.get(actor, row.documentSha256);
    return { bytes, name: `${quote.number}-${row.revision}` };
  }
}
