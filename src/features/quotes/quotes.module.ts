import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { QuoteLineEntity } from './quote-line.entity.js';
import { QuoteRevisionEntity } from './quote-revision.entity.js';
import { QuoteEntity } from './quote.entity.js';
import { QuotesRepository } from './quotes.repository.js';
import { QuotesService } from './quotes.service.js';

@Module({
  imports: [TypeOrmModule.forFeature([QuoteEntity, QuoteRevisionEntity, QuoteLineEntity])],
  providers: [QuotesRepository, QuotesService],
  exports: [QuotesService],
})
export class QuotesModule {}
