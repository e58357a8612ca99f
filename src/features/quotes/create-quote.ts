import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { DocumentNumbers } from '../../platform/numbering/document-numbers.js';
import { CompaniesService } from '../companies/index.js';
import { PriceQuote } from './price-quote.js';
import type { QuoteBody } from './quotes.dto.js';
import { type QuoteSight, QuotesRepository } from './quotes.repository.js';

const BEFORE_THE_FIRST = 1000;

/** Makes a quote: a draft of its first revision, priced. */
@Injectable()
export class CreateQuote {
  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
    private readonly companies: CompaniesService,
    private readonly numbers: DocumentNumbers,
    private readonly pricing: PriceQuote,
    private readonly quotes: QuotesRepository,
  ) {}

  async execute(actor: Actor, body: QuoteBody): Promise<QuoteSight & { created: boolean }> {
    return this.db.write(actor, async () => {
      const there = await this.quotes.store.madeBefore(actor, body);
      if (there !== null) return { ...(await this.quotes.sight(actor, there)), created: false };
      const { timeZone } = await this.companies.current(actor);
      const { place, values, lines } = await this.pricing.execute(actor, body, this.clock.today(timeZone));
      const number = `Q-${BEFORE_THE_FIRST + (await this.numbers.next(actor, 'quote'))}`;
      const { row, created } = await this.quotes.store.create(actor, body, { ...place, number });
      if (created) await this.quotes.addRevision(actor, row.id, { ...values, revision: 1, state: 'draft' }, lines);
      return { ...(await this.quotes.sight(actor, row)), created };
    });
  }
}
