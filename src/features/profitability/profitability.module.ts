import { Module } from '@nestjs/common';
import { CostsModule } from '../costs/index.js';
import { InvoicesModule } from '../invoices/index.js';
import { JobsModule } from '../jobs/index.js';
import { WorkWeeksModule } from '../work-weeks/index.js';
import { ProfitabilityController } from './profitability.controller.js';
import { ProfitabilityService } from './profitability.service.js';

@Module({ imports: [JobsModule, WorkWeeksModule, CostsModule, InvoicesModule], controllers: [ProfitabilityController], providers: [ProfitabilityService] })
export class ProfitabilityModule {}
