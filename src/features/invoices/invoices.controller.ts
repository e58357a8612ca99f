import { Body, Controller, Query, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Actor, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ActionRoute, CreateRoute, DocumentRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { sendPdf } from '../../platform/http/send-document.js';
import { ReasonBody } from '../jobs/index.js';
import { DraftInvoice } from './draft-invoice.js';
import { toInvoiceSummary, toInvoiceView } from './invoice.mapper.js';
import type { InvoiceEntity } from './invoice.entity.js';
import { InvoiceBody, InvoicesQuery } from './invoices.dto.js';
import { InvoicesService } from './invoices.service.js';
import { InvoiceSummaryView, InvoiceView } from './invoices.view.js';
import { IssueInvoice } from './issue-invoice.js';
import { VoidInvoice } from './void-invoice.js';

@Controller('v1/invoices')
export class InvoicesController {
  constructor(
    private readonly invoices: InvoicesService,
    private readonly drafting: DraftInvoice,
    private readonly issuing: IssueInvoice,
    private readonly voiding: VoidInvoice,
  ) {}

  @CreateRoute(InvoiceView, { roles: OFFICE, summary: 'Draft the invoice of a job', description: 'Copies the lines, taxes and totals of the accepted quote.' })
  async create(@CurrentActor() actor: Actor, @Body() body: InvoiceBody): Promise<Reply<InvoiceView>> {
    const { row, created } = await this.drafting.execute(actor, body);
    return made(await this.view(actor, row), row.version, created);
  }

  @ListRoute(InvoiceSummaryView, { roles: OFFICE, summary: 'List the invoices' })
  async list(@CurrentActor() actor: Actor, @Query() query: InvoicesQuery): Promise<Page<InvoiceSummaryView>> {
    return mapPage(await this.invoices.list(actor, query), toInvoiceSummary);
  }

  @ReadRoute(InvoiceView, { roles: OFFICE, summary: 'Read an invoice' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<InvoiceView>> {
    return this.tag(actor, await this.invoices.find(actor, id));
  }

  @ActionRoute(InvoiceView, { path: ':id/issue', bodyless: true, roles: OFFICE, summary: 'Issue an invoice', description: 'Gives it the next number, the day of issue and the day it is due, and prints it. From then on it never changes.' })
  async issue(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<InvoiceView>> {
    return this.tag(actor, await this.issuing.execute(actor, id));
  }

  @ActionRoute(InvoiceView, { path: ':id/void', roles: OFFICE, summary: 'Void an invoice', description: 'Only while nothing is paid of it. Its number stays used, and the job can be billed anew.' })
  async void(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: ReasonBody): Promise<Reply<InvoiceView>> {
    return this.tag(actor, await this.voiding.execute(actor, id, body.reason));
  }

  @DocumentRoute({ path: ':id/document', roles: OFFICE, summary: 'The invoice as it was sent' })
  async document(@CurrentActor() actor: Actor, @IdParam() id: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply): Promise<void> {
    const { bytes, number } = await this.invoices.document(actor, id);
    sendPdf(request, reply, bytes, number);
  }

  private async tag(actor: Actor, row: InvoiceEntity): Promise<Reply<InvoiceView>> {
    return tagged(await this.view(actor, row), row.version);
  }

  private async view(actor: Actor, row: InvoiceEntity): Promise<InvoiceView> {
    return toInvoiceView(row, await this.invoices.linesOf(actor, row.id));
  }
}
