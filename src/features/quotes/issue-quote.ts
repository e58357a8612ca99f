import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { addDays, Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { FileStore } from '../../platform/files/file-store.js';
import { notPossible } from '../../platform/http/problems.js';
import { CompaniesService } from '../companies/index.js';
import { PrintQuote } from './print-quote.js';
import { type QuoteSight, QuotesRepository } from './quotes.repository.js';

const USUAL_VALIDITY_DAYS = 30;

/** Issues the draft of a quote: from here on the revision and its document never change. */
@Injectable()
export class IssueQuote {
  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
    private readonly companies: CompaniesService,
    private readonly files: FileStore,
    private readonly printer: PrintQuote,
    private readonly quotes: QuotesRepository,
  ) {}

  /**
   * Repeated, it answers the quote as it stands.
   * @throws Problem 422 for an offer of nothing, of less than nothing, or with a section that holds nothing
   */
  async execute(actor: Actor, id: string): Promise<QuoteSight> {
    return this.db.write(actor, async () => {
      const quote = await this.quotes.store.lock(actor, id);
      const sight = await this.quotes.sight(actor, quote);
      const { revision, lines } = sight;
      if (revision.state !== 'draft') return sight;
      if (lines.length === 0) throw notPossible('The quote has no lines. Add labor, parts or other lines first.');
      const empty = revision.sections.find(({ key }) => !lines.some((line) => line.section === key));
      if (empty !== undefined) throw notPossible(`The section ${empty.key} (${empty.title}) has no lines. Put work into it, or take it out.`);
      if (revision.grossTotal.lt(0)) throw notPossible('The quote comes to less than nothing. Lower its discounts first.');
      const company = await this.companies.current(actor);
      const issuedOn = this.clock.today(company.timeZone);
      const validUntil = revision.validUntil ?? addDays(issuedOn, USUAL_VALIDITY_DAYS);
      const pdf = await this.printer.execute(actor, company, sight, { issuedOn, validUntil });
      const documentSha256 = await this.files.put(actor, pdf, 'application/pdf');
      await this.quotes.updateRevision(actor, revision.id, { state: 'issued', issuedAt: this.clock.now(), issuedOn, validUntil, documentSha256 });
      return this.quotes.sight(actor, await this.quotes.store.update(actor, id, quote.version, {}));
    });
  }
}
