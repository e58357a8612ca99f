import { Module } from '@nestjs/common';
import { AttachmentsModule } from '../attachments/index.js';
import { PartsModule } from '../catalog/index.js';
import { CompaniesModule } from '../companies/index.js';
import { CostsModule } from '../costs/index.js';
import { CustomersModule } from '../customers/index.js';
import { EquipmentModule } from '../equipment/index.js';
import { FeaturesModule } from '../features/index.js';
import { FieldFactsModule } from '../field-facts/index.js';
import { InvoicesModule } from '../invoices/index.js';
import { JobsModule } from '../jobs/index.js';
import { LaborRulesModule } from '../labor-rules/index.js';
import { PaymentsModule } from '../payments/index.js';
import { PeopleModule } from '../people/index.js';
import { QuotesModule } from '../quotes/index.js';
import { ScheduleModule } from '../schedule/index.js';
import { SessionsModule } from '../sessions/index.js';
import { SitesModule } from '../sites/index.js';
import { SurveysModule } from '../surveys/index.js';
import { TimeEntriesModule } from '../time-entries/index.js';
import { WorkWeeksModule } from '../work-weeks/index.js';
import { Demonstration } from './demonstration.js';
import { SeedBills } from './seed-bills.js';
import { SeedCatalog } from './seed-catalog.js';
import { SeedCosts } from './seed-costs.js';
import { SeedField } from './seed-field.js';
import { SeedJobs } from './seed-jobs.js';
import { SeedPayroll } from './seed-payroll.js';
import { SeedPeople } from './seed-people.js';
import { SeedPhotos } from './seed-photos.js';
import { SeedPlaces } from './seed-places.js';
import { SeedQuotes } from './seed-quotes.js';
import { SeedSchedule } from './seed-schedule.js';

@Module({
  imports: [
    CompaniesModule, PeopleModule, SessionsModule, CustomersModule, SitesModule, FeaturesModule, EquipmentModule, SurveysModule,
    PartsModule, LaborRulesModule, QuotesModule, JobsModule, TimeEntriesModule, CostsModule, InvoicesModule, PaymentsModule,
    AttachmentsModule, FieldFactsModule, ScheduleModule, WorkWeeksModule,
  ],
  providers: [Demonstration, SeedPeople, SeedCatalog, SeedPlaces, SeedQuotes, SeedJobs, SeedPhotos, SeedField, SeedSchedule, SeedPayroll, SeedCosts, SeedBills],
  exports: [Demonstration],
})
export class DemonstrationModule {}
