import { type DynamicModule, Module } from '@nestjs/common';
import { AttachmentsModule } from './features/attachments/index.js';
import { CalculationsModule } from './features/calculations/index.js';
import { CalendarModule } from './features/calendar/index.js';
import { CompaniesModule } from './features/companies/index.js';
import { CostsModule } from './features/costs/index.js';
import { CustomersModule } from './features/customers/index.js';
import { DayModule } from './features/day/index.js';
import { DemonstrationModule } from './features/demonstration/index.js';
import { DevicesModule } from './features/devices/index.js';
import { InvoicesModule } from './features/invoices/index.js';
import { JobsModule } from './features/jobs/index.js';
import { EquipmentModule } from './features/equipment/index.js';
import { FieldFactsModule } from './features/field-facts/index.js';
import { FeaturesModule } from './features/features/index.js';
import { LaborRulesModule } from './features/labor-rules/index.js';
import { PartsModule } from './features/catalog/index.js';
import { PaymentsModule } from './features/payments/index.js';
import { PeopleModule } from './features/people/index.js';
import { ProfitabilityModule } from './features/profitability/index.js';
import { ProposalsModule } from './features/proposals/index.js';
import { QuotesModule } from './features/quotes/index.js';
import { ScheduleModule } from './features/schedule/index.js';
import { SessionsModule } from './features/sessions/index.js';
import { SitesModule } from './features/sites/index.js';
import { SyncModule } from './features/sync/index.js';
import { SurveysModule } from './features/surveys/index.js';
import { TimeEntriesModule } from './features/time-entries/index.js';
import { WorkWeeksModule } from './features/work-weeks/index.js';
import { AuthModule } from './platform/auth/auth.module.js';
import { ClockModule } from './platform/clock/clock.module.js';
import { DatabaseModule } from './platform/database/database.module.js';
import { FilesModule } from './platform/files/files.module.js';
import type { Lifecycle } from './platform/http/lifecycle.js';
import { HttpModule } from './platform/http/http.module.js';
import { NumberingModule } from './platform/numbering/numbering.module.js';
import { SyncKindsModule } from './platform/sync/sync-kinds.module.js';

const SLICES = [
  CompaniesModule,
  PeopleModule,
  SessionsModule,
  DevicesModule,
  CustomersModule,
  PartsModule,
  LaborRulesModule,
  QuotesModule,
  SitesModule,
  FeaturesModule,
  EquipmentModule,
  SurveysModule,
  JobsModule,
  ScheduleModule,
  CalendarModule,
  FieldFactsModule,
  TimeEntriesModule,
  DayModule,
  SyncModule,
  CostsModule,
  AttachmentsModule,
  InvoicesModule,
  PaymentsModule,
  WorkWeeksModule,
  ProfitabilityModule,
  ProposalsModule,
  CalculationsModule,
  DemonstrationModule,
];

@Module({})
export class AppModule {
  static with(options: { serviceUrl: string; signingKey: string; lifecycle: Lifecycle }): DynamicModule {
    return {
      module: AppModule,
      imports: [
        ClockModule,
        DatabaseModule.connect(options.serviceUrl),
        AuthModule.withKey(options.signingKey),
        HttpModule.with(options.lifecycle),
        FilesModule,
        NumberingModule,
        SyncKindsModule,
        ...SLICES,
      ],
    };
  }
}
