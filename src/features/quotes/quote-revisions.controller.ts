import { Body, Controller, Param, Query } from '@nestjs/common';
import { type Actor, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { ListQuery, mapPage, type Page } from '../../platform/http/lists.js';
import { notFound } from '../../platform/http/problems.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { QuoteSummaryView, QuoteView } from './quote-views.dto.js';
import { toQuoteSummary, toQuoteView } from './quote.mapper.js';
import { ReviseQuoteBody } from './quotes.dto.js';
import { QuotesService } from './quotes.service.js';
import { ReviseQuote } from './revise-quote.js';

@Controller('v1/quotes')
export class QuoteRevisionsController {
  constructor(
    private readonly quotes: QuotesService,
    private readonly revising: ReviseQuote,
  ) {}

  @CreateRoute(QuoteView, {
    path: ':id/revisions',
    roles: OFFICE,
    summary: 'Make a new revision of an issued quote',
    description: 'A draft, priced anew: labor by the rules of the survey\'s date, parts at their cost of today. The issued revision is superseded at once and can not be accepted any more.',
  })
  async revise(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: ReviseQuoteBody): Promise<Reply<QuoteView>> {
    const sight = await this.revising.execute(actor, id, body);
    return made(toQuoteView(sight), sight.quote.version, sight.created);
  }

  @ListRoute(QuoteSummaryView, { path: ':id/revisions', roles: OFFICE, summary: 'List the revisions of a quote' })
  async list(@CurrentActor() actor: Actor, @IdParam() id: string, @Query() query: ListQuery): Promise<Page<QuoteSummaryView>> {
    const { quote, page } = await this.quotes.listRevisions(actor, id, query);
    return mapPage(page, (row) => toQuoteSummary(quote, row));
  }

  @ReadRoute(QuoteView, { path: ':id/revisions/:revision', roles: OFFICE, summary: 'Read one revision of a quote' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string, @Param('revision') revision: string): Promise<Reply<QuoteView>> {
    if (!/^[1-9]\d{0,8}$/.test(revision)) throw notFound('revision of the quote');
    const sight = await this.quotes.find(actor, id, Number(revision));
    return tagged(toQuoteView(sight), sight.quote.version);
  }
}
