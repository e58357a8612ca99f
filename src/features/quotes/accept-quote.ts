import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { stateConflict } from '../../platform/http/problems.js';
import { CompaniesService } from '../companies/index.js';
import { JobsService } from '../jobs/index.js';
import { SitesService } from '../sites/index.js';
import type { AcceptQuoteBody } from './quotes.dto.js';
import { type QuoteSight, QuotesRepository } from './quotes.repository.js';
import { linesTaken, sectionsTaken, sumsTaken } from './taken-sections.js';

export interface Acceptance {
  readonly jobId: string;
  readonly created: boolean;
}

/** Notes that the customer accepted, and makes the job, both or neither. */
@Injectable()
export class AcceptQuote {
  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
    private readonly companies: CompaniesService,
    private readonly sites: SitesService,
    private readonly jobs: JobsService,
    private readonly quotes: QuotesRepository,
  ) {}

  /**
   * The quote's row is locked, so that of two acceptances at once the second finds the first.
   * @throws Problem 409 unless the quote is issued and still valid, or was accepted with this very body; 422 for sections
   *   that can't be taken so
   */
  async execute(actor: Actor, id: string, { acceptedBy, acceptedOn, sections }: AcceptQuoteBody): Promise<Acceptance> {
    return this.db.write(actor, async () => {
      const quote = await this.quotes.store.lock(actor, id);
      const sight = await this.quotes.sight(actor, quote);
      const { revision } = sight;
      const timeZone = await this.timeZoneOf(actor, quote.siteId);
      if (revision.state === 'accepted') {
        const taken = sectionsTaken(revision.sections, sections);
        if (revision.acceptedBy !== acceptedBy || revision.acceptedOn !== acceptedOn || revision.acceptedSections?.join() !== taken.join()) {
          throw stateConflict(`The quote ${quote.number} was accepted by ${revision.acceptedBy} on ${revision.acceptedOn} already${withSections(revision.acceptedSections)}.`);
        }
        return { jobId: await this.makeJob(actor, sight, taken, timeZone), created: false };
      }
      if (revision.state !== 'issued') throw stateConflict(`Revision ${revision.revision} of the quote ${quote.number} is a draft. Issue it first; then it can be accepted.`);
      requireValid(revision.validUntil ?? '', this.clock.today(timeZone), acceptedOn);
      const taken = sectionsTaken(revision.sections, sections);
      const { netTotal, taxTotal, grossTotal, taxes } = sumsTaken(revision, linesTaken(sight.lines, taken));
      const totals = { acceptedNetTotal: netTotal, acceptedTaxTotal: taxTotal, acceptedGrossTotal: grossTotal, acceptedTaxes: taxes };
      await this.quotes.updateRevision(actor, revision.id, { state: 'accepted', acceptedBy, acceptedOn, acceptedAt: this.clock.now(), acceptedSections: taken, ...totals });
      await this.quotes.store.update(actor, id, quote.version, {});
      return { jobId: await this.makeJob(actor, sight, taken, timeZone), created: true };
    });
  }

  /** A quote has one job, of what was taken: for one that is there already, this is its id. */
  private async makeJob(actor: Actor, { quote, revision, lines }: QuoteSight, taken: readonly string[], timeZone: string): Promise<string> {
    const { customerId, siteId, featureId } = quote;
    const { title, currency } = revision;
    const agreed = linesTaken(lines, taken);
    const { netTotal, taxTotal } = sumsTaken(revision, agreed);
    const plan = agreed.map(({ costCode, hours, cost, amount }) => ({ costCode, hours: hours ?? new Decimal(0), cost, amount }));
    const work = { quoteId: quote.id, quoteRevision: revision.revision, title, customerId, siteId, featureId, timeZone, currency, contractTotal: netTotal, contractTax: taxTotal, plan };
    return (await this.jobs.createFromQuote(actor, work)).id;
  }

  private async timeZoneOf(actor: Actor, siteId: string | null): Promise<string> {
    return siteId === null ? (await this.companies.current(actor)).timeZone : (await this.sites.find(actor, siteId)).timeZone;
  }
}

function withSections(taken: readonly string[] | null): string {
  return taken === null || taken.length === 0 ? '' : ` with the sections ${taken.join(', ')}`;
}

/** All three are days at the site, as YYYY-MM-DD, which sort as text. */
function requireValid(validUntil: string, today: string, acceptedOn: string): void {
  const advice = 'Make a new revision, which prices the work anew, and issue it.';
  if (today > validUntil) throw stateConflict(`The quote was valid until ${validUntil}, and at the site it is ${today}. ${advice}`);
  if (acceptedOn > validUntil) {
    throw stateConflict(`The quote is valid until ${validUntil} and can not be accepted on ${acceptedOn}. ${advice}`, [{ pointer: '/acceptedOn', detail: `must be ${validUntil} or before` }]);
  }
}
