import { Body, Controller, Query, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Actor, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ActionRoute, ChangeRoute, CreateRoute, DocumentRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { patched } from '../../platform/http/merge-patch.js';
import { made, Reply, tagged } from '../../platform/http/reply.js';
import { sendPdf } from '../../platform/http/send-document.js';
import { AcceptQuote } from './accept-quote.js';
import { ChangeQuote } from './change-quote.js';
import { CreateQuote } from './create-quote.js';
import { IssueQuote } from './issue-quote.js';
import { QuoteDocumentQuery, QuoteListQuery } from './quote-queries.dto.js';
import { QuoteAcceptanceView, QuoteSummaryView, QuoteView } from './quote-views.dto.js';
import { toQuoteSummary, toQuoteView } from './quote.mapper.js';
import { AcceptQuoteBody, QuoteBody } from './quotes.dto.js';
import { QuotesService } from './quotes.service.js';

@Controller('v1/quotes')
export class QuotesController {
  constructor(
    private readonly quotes: QuotesService,
    private readonly creating: CreateQuote,
    private readonly changing: ChangeQuote,
    private readonly issuing: IssueQuote,
    private readonly accepting: AcceptQuote,
  ) {}

  @CreateRoute(QuoteView, {
    roles: OFFICE,
    summary: 'Price a quote',
    description: 'Makes a draft. Labor goes by the rules in force on the survey\'s date (without a survey: today\'s), parts by their cost of today, and each line tells in `working` how its price came about.',
  })
  async create(@CurrentActor() actor: Actor, @Body() body: QuoteBody): Promise<Reply<QuoteView>> {
    const sight = await this.creating.execute(actor, body);
    return made(toQuoteView(sight), sight.quote.version, sight.created);
  }

  @ListRoute(QuoteSummaryView, { roles: OFFICE, summary: 'List the quotes, each with its current revision' })
  async list(@CurrentActor() actor: Actor, @Query() query: QuoteListQuery): Promise<Page<QuoteSummaryView>> {
    return mapPage(await this.quotes.list(actor, query), (row) => toQuoteSummary(row, row.current));
  }

  @ReadRoute(QuoteView, { roles: OFFICE, summary: 'Read a quote in its current revision' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<QuoteView>> {
    const sight = await this.quotes.find(actor, id);
    return tagged(toQuoteView(sight), sight.quote.version);
  }

  @ChangeRoute(QuoteBody, QuoteView, { roles: OFFICE, summary: 'Change a draft', description: 'Prices it anew, parts at their cost of today. A list in the patch replaces the whole list. An issued quote does not change: make a new revision.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<QuoteView>> {
    const { revision } = await this.quotes.find(actor, id);
    const sight = await this.changing.execute(actor, id, version, await patched(QuoteBody, revision.asked, patch));
    return tagged(toQuoteView(sight), sight.quote.version);
  }

  @ActionRoute(QuoteView, { path: ':id/issue', bodyless: true, roles: OFFICE, summary: 'Issue a quote', description: 'Prints the document and freezes the revision: neither changes from then on.' })
  async issue(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<QuoteView>> {
    const sight = await this.issuing.execute(actor, id);
    return tagged(toQuoteView(sight), sight.quote.version);
  }

  @DocumentRoute({ path: ':id/document', roles: OFFICE, summary: 'The quote as it was issued' })
  async document(@CurrentActor() actor: Actor, @IdParam() id: string, @Query() query: QuoteDocumentQuery, @Req() request: FastifyRequest, @Res() reply: FastifyReply): Promise<void> {
    const { bytes, name } = await this.quotes.document(actor, id, query.revision);
    sendPdf(request, reply, bytes, name);
  }

  @CreateRoute(QuoteAcceptanceView, {
    path: ':id/acceptance',
    roles: OFFICE,
    summary: 'Note that the customer accepted',
    description: 'Makes the job, of the sections that were taken: all but the optional ones unless `sections` says otherwise. What was not taken stays in the quote; ordered later, it is another quote. Only the current revision can be accepted, once it is issued and until `validUntil` in the site\'s time zone.',
  })
  async accept(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: AcceptQuoteBody): Promise<Reply<QuoteAcceptanceView>> {
    const { jobId, created } = await this.accepting.execute(actor, id, body);
    return new Reply({ jobId }, created ? 201 : 200, {});
  }
}
