import { Injectable } from '@nestjs/common';
import type { Decimal } from '../../domain/decimal.js';
import type { Actor } from '../../platform/auth/actor.js';
import { FileStore } from '../../platform/files/file-store.js';
import type { MoneyBody } from '../../platform/http/fields/index.js';
import type { Page } from '../../platform/http/lists.js';
import { Problem } from '../../platform/http/problem.js';
import { noSuchReference, stateConflict } from '../../platform/http/problems.js';
import { InvoiceBalance } from './invoice-balance.js';
import type { InvoiceEntity } from './invoice.entity.js';
import type { InvoiceLineEntity } from './invoice-line.entity.js';
import type { InvoicesQuery } from './invoices.dto.js';
import { type FiguresOfJob, InvoicesRepository } from './invoices.repository.js';

/** What is read of invoices, and what payments do to them. */
@Injectable()
export class InvoicesService {
  constructor(
    private readonly invoices: InvoicesRepository,
    private readonly balance: InvoiceBalance,
    private readonly files: FileStore,
  ) {}

  /** @throws Problem 404 */
  find(actor: Actor, id: string): Promise<InvoiceEntity> {
    return this.invoices.store.find(actor, id);
  }

  linesOf(actor: Actor, invoiceId: string): Promise<InvoiceLineEntity[]> {
    return this.invoices.linesOf(actor, invoiceId);
  }

  list(actor: Actor, query: InvoicesQuery): Promise<Page<InvoiceEntity>> {
    return this.invoices.store.list(actor, query, { jobId: query.jobId, state: query.state });
  }

  /** The PDF as it was issued, and the number it bears. @throws Problem 404, or 409 before issue */
  async document(actor: Actor, id: string): Promise<{ bytes: Buffer; number: string }> {
    const { documentSha256, number } = await this.find(actor, id);
    if (documentSha256 === null || number === null) throw stateConflict('The invoice was not issued, so there is no document. Issue it first.');
    return { bytes: (await this.files.get(actor, documentSha256)).bytes, number };
  }

  /** What was billed for a job and what came in, in the job's currency; one statement. */
  figuresOfJob(actor: Actor, jobId: string): Promise<FiguresOfJob> {
    return this.invoices.figuresOfJob(actor, jobId);
  }

  /**
   * The invoice that a payment is for, locked until the transaction ends. Payments lock it before anything of their
   * own, so that none of them waits for another in a circle.
   * @throws Problem 422 at /invoiceId when it is not there
   */
  async lockForPayment(actor: Actor, invoiceId: string): Promise<InvoiceEntity> {
    try {
      return await this.invoices.store.lock(actor, invoiceId);
    } catch (error) {
      if (error instanceof Problem && error.code === 'not-found') throw noSuchReference('/invoiceId', 'invoice');
      throw error;
    }
  }

  /** Adds a payment to a locked invoice. @throws Problem 400, 409 or 422, with pointers into the payment's body */
  applyPayment(actor: Actor, locked: InvoiceEntity, amount: MoneyBody): Promise<void> {
    return this.balance.receive(actor, locked, amount);
  }

  /** Takes a voided payment off a locked invoice. */
  takePaymentBack(actor: Actor, locked: InvoiceEntity, amount: Decimal): Promise<void> {
    return this.balance.giveBack(actor, locked, amount);
  }
}
