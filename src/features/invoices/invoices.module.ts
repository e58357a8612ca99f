import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { CompaniesModule } from '../companies/index.js';
import { CustomersModule } from '../customers/index.js';
import { FeaturesModule } from '../features/index.js';
import { JobsModule } from '../jobs/index.js';
import { QuotesModule } from '../quotes/index.js';
import { SitesModule } from '../sites/index.js';
import { DraftInvoice } from './draft-invoice.js';
import { InvoiceBalance } from './invoice-balance.js';
import { InvoiceEntity } from './invoice.entity.js';
import { InvoiceLineEntity } from './invoice-line.entity.js';
import { InvoiceRecipient } from './invoice-recipient.js';
import { InvoicesController } from './invoices.controller.js';
import { InvoicesRepository } from './invoices.repository.js';
import { InvoicesService } from './invoices.service.js';
import { IssueInvoice } from './issue-invoice.js';
import { VoidInvoice } from './void-invoice.js';

@Module({
  imports: [TypeOrmModule.forFeature([InvoiceEntity, InvoiceLineEntity]), CompaniesModule, CustomersModule, SitesModule, FeaturesModule, QuotesModule, JobsModule],
  controllers: [InvoicesController],
  providers: [InvoicesRepository, InvoiceBalance, InvoiceRecipient, DraftInvoice, IssueInvoice, VoidInvoice, InvoicesService],
  exports: [InvoicesService, DraftInvoice, IssueInvoice],
})
export class InvoicesModule {}
