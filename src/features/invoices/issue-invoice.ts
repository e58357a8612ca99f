import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import type { Actor } from '../../platform/auth/actor.js';
import { addDays, Clock, localDate } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { renderDocument } from '../../platform/documents/index.js';
import { FileStore } from '../../platform/files/file-store.js';
import { stateConflict } from '../../platform/http/problems.js';
import { DocumentNumbers } from '../../platform/numbering/document-numbers.js';
import { CompaniesService, type CompanyEntity } from '../companies/index.js';
import { stateWhenPaid } from './invoice-balance.js';
import { composeInvoiceDocument } from './invoice-document.js';
import { type NumberedInvoice, toDocumentInput } from './invoice-document-input.js';
import { InvoiceRecipient } from './invoice-recipient.js';
import type { InvoiceEntity } from './invoice.entity.js';
import { InvoicesRepository } from './invoices.repository.js';

/** The series of a company begins at INV-1001. */
const BEFORE_FIRST = 1000;

/**
 * Gives the invoice its number and its dates and prints it, all in one transaction: either the customer can be sent
 * a numbered document, or nothing happened and the number is free for the next.
 */
@Injectable()
export class IssueInvoice {
  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
    private readonly companies: CompaniesService,
    private readonly numbers: DocumentNumbers,
    private readonly files: FileStore,
    private readonly invoices: InvoicesRepository,
    private readonly recipient: InvoiceRecipient,
  ) {}

  /** Repeated, it answers with the invoice as it stands. @throws Problem 404, or 409 when it is void */
  execute(actor: Actor, id: string): Promise<InvoiceEntity> {
    return this.db.write(actor, async () => {
      const draft = await this.invoices.store.lock(actor, id);
      if (draft.state === 'void') throw stateConflict('The invoice is void and can not be issued. Make a new one for the job.');
      if (draft.number !== null) return draft;
      const company = await this.companies.current(actor);
      const dated = datesOf(company, this.clock.now());
      const number = `INV-${BEFORE_FIRST + (await this.numbers.next(actor, 'invoice'))}`;
      const documentSha256 = await this.print(actor, company, { ...draft, ...dated, number });
      const state = stateWhenPaid(new Decimal(0), draft.grossTotal);
      return this.invoices.writeLocked(actor, draft, { ...dated, number, documentSha256, state });
    });
  }

  private async print(actor: Actor, company: CompanyEntity, invoice: NumberedInvoice): Promise<Buffer> {
    const lines = await this.invoices.linesOf(actor, invoice.id);
    const recipient = await this.recipient.of(actor, invoice.jobId);
    const pdf = await renderDocument(composeInvoiceDocument(toDocumentInput(company, invoice, lines, recipient)));
    return this.files.put(actor, pdf, 'application/pdf');
  }
}

/** An invoice is of the day that the office writes, whatever the day at the site. */
function datesOf({ timeZone, paymentTermsDays }: CompanyEntity, issuedAt: Date): { issuedAt: Date; issuedOn: string; dueOn: string } {
  const issuedOn = localDate(issuedAt, timeZone);
  return { issuedAt, issuedOn, dueOn: addDays(issuedOn, paymentTermsDays) };
}
