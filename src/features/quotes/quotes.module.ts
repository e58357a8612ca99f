import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { PartsModule } from '../catalog/index.js';
import { CompaniesModule } from '../companies/index.js';
import { CustomersModule } from '../customers/index.js';
import { FeaturesModule } from '../features/index.js';
import { JobsModule } from '../jobs/index.js';
import { LaborRulesModule } from '../labor-rules/index.js';
import { SitesModule } from '../sites/index.js';
import { SurveysModule } from '../surveys/index.js';
import { AcceptQuote } from './accept-quote.js';
import { ChangeQuote } from './change-quote.js';
import { CreateQuote } from './create-quote.js';
import { IssueQuote } from './issue-quote.js';
import { LaborRulesFor } from './labor-rules-for.js';
import { PriceQuote } from './price-quote.js';
import { PrintQuote } from './print-quote.js';
import { QuoteLineEntity } from './quote-line.entity.js';
import { QuoteList } from './quote-list.js';
import { QuotePlaces } from './quote-place.js';
import { QuoteRevisionEntity } from './quote-revision.entity.js';
import { QuoteRevisionsController } from './quote-revisions.controller.js';
import { QuoteEntity } from './quote.entity.js';
import { QuotesController } from './quotes.controller.js';
import { QuotesRepository } from './quotes.repository.js';
import { QuotesService } from './quotes.service.js';
import { ReviseQuote } from './revise-quote.js';

@Module({
  imports: [
    TypeOrmModule.forFeature([QuoteEntity, QuoteRevisionEntity, QuoteLineEntity]),
    CompaniesModule, CustomersModule, SitesModule, FeaturesModule, SurveysModule, PartsModule, LaborRulesModule, JobsModule,
  ],
  controllers: [QuotesController, QuoteRevisionsController],
  providers: [QuotesRepository, QuoteList, QuotesService, QuotePlaces, LaborRulesFor, PriceQuote, PrintQuote, CreateQuote, ChangeQuote, IssueQuote, ReviseQuote, AcceptQuote],
  exports: [QuotesService, CreateQuote, IssueQuote, ReviseQuote, AcceptQuote],
})
export class QuotesModule {}
