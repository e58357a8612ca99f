import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { notPossible, stateConflict } from '../../platform/http/problems.js';
import { requestDigest } from '../../platform/resources/digest.js';
import { CompaniesService } from '../companies/index.js';
import { type Asked, askedOf } from './asked.js';
import { PriceQuote } from './price-quote.js';
import type { QuoteRevisionEntity } from './quote-revision.entity.js';
import type { ReviseQuoteBody } from './quotes.dto.js';
import type { QuoteEntity } from './quote.entity.js';
import { type Place, type QuoteSight, QuotesRepository } from './quotes.repository.js';

/** Makes a new draft in the place of an issued revision, priced at the parts' cost of now. */
@Injectable()
export class ReviseQuote {
  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
    private readonly companies: CompaniesService,
    private readonly pricing: PriceQuote,
    private readonly quotes: QuotesRepository,
  ) {}

  /**
   * Repeated, it answers the draft that is there.
   * @throws Problem 409 for an accepted quote, and for a draft that says something else than the request
   */
  async execute(actor: Actor, id: string, body: ReviseQuoteBody): Promise<QuoteSight & { created: boolean }> {
    return this.db.write(actor, async () => {
      const quote = await this.quotes.store.lock(actor, id);
      const before = await this.quotes.revision(actor, id, quote.revision);
      if (before.state === 'accepted') throw stateConflict(`The quote ${quote.number} was accepted: it is what was agreed. Make another quote for what comes on top.`);
      if (before.state === 'draft') {
        requireSameDraft(before, body);
        return { ...(await this.quotes.sight(actor, quote)), created: false };
      }
      const today = this.clock.today((await this.companies.current(actor)).timeZone);
      const asked = revised(stillValid(before.asked, today), body);
      const { place, values, lines } = await this.pricing.execute(actor, asked, before.surveyId === null ? before.rulesAsOf : today);
      requireSameFeature(quote, place);
      await this.quotes.updateRevision(actor, before.id, { state: 'superseded' });
      const revision = before.revision + 1;
      await this.quotes.addRevision(actor, id, { ...values, revision, state: 'draft', reason: body.reason ?? null }, lines);
      const row = await this.quotes.store.update(actor, id, quote.version, { ...place, revision });
      return { ...(await this.quotes.sight(actor, row)), created: true };
    });
  }
}

/** A field that is missing stays; null takes away what can be missing. */
function revised(before: Asked, body: ReviseQuoteBody): Asked {
  return askedOf({
    surveyId: (body.surveyId === undefined ? before.surveyId : body.surveyId) ?? null,
    featureId: (body.featureId === undefined ? before.featureId : body.featureId) ?? null,
    validUntil: (body.validUntil === undefined ? before.validUntil : body.validUntil) ?? null,
    title: body.title ?? before.title,
    sections: body.sections ?? before.sections ?? null,
    labor: body.labor ?? before.labor ?? null,
    parts: body.parts ?? before.parts ?? null,
    other: body.other ?? before.other ?? null,
  });
}

/** A date that has passed is no wish for the new offer. */
function stillValid(asked: Asked, today: string): Asked {
  return asked.validUntil && asked.validUntil < today ? { ...asked, validUntil: null } : asked;
}

/** A phone that repeats the request gets its draft; changes that would be dropped without a word are refused. */
function requireSameDraft(draft: QuoteRevisionEntity, body: ReviseQuoteBody): void {
  const same = requestDigest(revised(draft.asked, body)).equals(requestDigest(draft.asked));
  if (!same) throw stateConflict(`Revision ${draft.revision} is a draft already. Change it with PATCH.`);
}

/** The older revisions show the same place: moved, they would say what the customer never read. */
function requireSameFeature(quote: QuoteEntity, place: Place): void {
  if (quote.featureId === null || quote.featureId === place.featureId) return;
  throw notPossible('The quote was issued for another feature. Make another quote for this one.', [{ pointer: '/surveyId', detail: 'must be a survey of the feature that the quote was issued for' }]);
}
