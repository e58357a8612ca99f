import { Module } from '@nestjs/common';
import { CostsModule } from '../costs/index.js';
import { InvoicesModule } from '../invoices/index.js';
import { JobsModule } from '../jobs/index.js';
import { TimeEntriesModule } from '../time-entries/index.js';
import { ProfitabilityController } from './profitability.controller.js';
import { ProfitabilityService } from './profitability.service.js';

@Module({ imports: [JobsModule, TimeEntriesModule, CostsModule, InvoicesModule], controllers: [ProfitabilityController], providers: [ProfitabilityService] })
export class ProfitabilityModule {}
