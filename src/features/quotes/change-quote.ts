import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { staleVersion, stateConflict } from '../../platform/http/problems.js';
import { CompaniesService } from '../companies/index.js';
import type { Asked } from './asked.js';
import { PriceQuote } from './price-quote.js';
import { type QuoteSight, QuotesRepository } from './quotes.repository.js';

/** Changes a draft, and prices it anew: parts at their cost of now. */
@Injectable()
export class ChangeQuote {
  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
    private readonly companies: CompaniesService,
    private readonly pricing: PriceQuote,
    private readonly quotes: QuotesRepository,
  ) {}

  /** @throws Problem 409 unless the quote is a draft, 412 when it was changed since */
  async execute(actor: Actor, id: string, version: number, asked: Asked): Promise<QuoteSight> {
    return this.db.write(actor, async () => {
      const quote = await this.quotes.store.lock(actor, id);
      const before = await this.quotes.revision(actor, id, quote.revision);
      if (before.state !== 'draft') throw stateConflict(`Revision ${before.revision} of the quote ${quote.number} is ${before.state} and does not change any more. ${ADVICE[before.state]}`);
      if (quote.version !== version) throw staleVersion('quote', quote.version);
      const madeOn = before.surveyId === null ? before.rulesAsOf : this.clock.today((await this.companies.current(actor)).timeZone);
      const { place, values, lines } = await this.pricing.execute(actor, asked, madeOn);
      await this.quotes.replaceLines(actor, before.id, lines);
      await this.quotes.updateRevision(actor, before.id, values);
      return this.quotes.sight(actor, await this.quotes.store.update(actor, id, version, place));
    });
  }
}

const ADVICE = {
  issued: 'Make a new revision instead.',
  accepted: 'It is what was agreed; make another quote for what comes on top.',
  superseded: 'Change the newer revision instead.',
};
