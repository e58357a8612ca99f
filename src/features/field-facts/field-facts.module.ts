import { Module, type OnModuleInit } from '@nestjs/common';
import { ModuleRef } from '@nestjs/core';
import { TypeOrmModule } from '@nestjs/typeorm';
import { MutationKinds } from '../../platform/sync/mutation-kinds.js';
import { SyncedKinds } from '../../platform/sync/synced-kinds.js';
import { AttachmentsModule } from '../attachments/index.js';
import { PartsModule } from '../catalog/index.js';
import { CompaniesModule } from '../companies/index.js';
import { EquipmentModule } from '../equipment/index.js';
import { FeaturesModule } from '../features/index.js';
import { JobsModule } from '../jobs/index.js';
import { QuotesModule } from '../quotes/index.js';
import { SurveysModule } from '../surveys/index.js';
import { ChangeRequestAnswersController } from './change-requests/change-request-answers.controller.js';
import { ChangeRequestEntity } from './change-requests/change-request.entity.js';
import { ChangeRequestsService } from './change-requests/change-requests.service.js';
import { syncAnswers } from './change-requests/sync-answers.js';
import { DepthEntity } from './depths/depth.entity.js';
import type { FactRecord, FactRequest } from './fact/fact.dto.js';
import type { FactEntity } from './fact/fact.entity.js';
import { FactPlaces } from './fact/fact-places.js';
import type { FactService } from './fact/fact.service.js';
import { syncFacts } from './fact/sync-facts.js';

import { FACT_CONTROLLERS, FACT_SERVICES } from './families.js';
import { InstallationEntity } from './installations/installation.entity.js';
import { MadeItem } from './installations/made-item.js';
import { LoadEntity } from './loads/load.entity.js';
import { MaterialUseEntity } from './material-uses/material-use.entity.js';
import { PunchItemEntity } from './punch-items/punch-item.entity.js';
import { PunchItemsController } from './punch-items/punch-items.controller.js';
import { PunchItemsService } from './punch-items/punch-items.service.js';
import { syncPunchItems } from './punch-items/sync-punch-items.js';
import { SignOffEntity } from './sign-offs/sign-off.entity.js';
import { FieldTotalsController } from './totals/totals.controller.js';
import { TotalsRepository } from './totals/totals.repository.js';
import { TotalsService } from './totals/totals.service.js';
import { WaterReadingEntity } from './water-readings/water-reading.entity.js';

const ENTITIES = [LoadEntity, DepthEntity, MaterialUseEntity, InstallationEntity, WaterReadingEntity, ChangeRequestEntity, SignOffEntity, PunchItemEntity];

@Module({
  imports: [TypeOrmModule.forFeature(ENTITIES), JobsModule, FeaturesModule, PartsModule, EquipmentModule, SurveysModule, AttachmentsModule, CompaniesModule, QuotesModule],
  controllers: [...FACT_CONTROLLERS, ChangeRequestAnswersController, PunchItemsController, FieldTotalsController],
  providers: [FactPlaces, MadeItem, ...FACT_SERVICES, PunchItemsService, TotalsRepository, TotalsService],
  exports: [...FACT_SERVICES, PunchItemsService],
})
export class FieldFactsModule implements OnModuleInit {
  constructor(
    private readonly module: ModuleRef,
    private readonly mutations: MutationKinds,
    private readonly synced: SyncedKinds,
  ) {}

  onModuleInit(): void {
    for (const service of FACT_SERVICES) {
      const facts: FactService<FactEntity, FactRequest, FactRecord> = this.module.get(service);
      syncFacts(facts, this.mutations, this.synced);
    }
    syncAnswers(this.module.get(ChangeRequestsService), this.mutations);
    syncPunchItems(this.module.get(PunchItemsService), this.mutations, this.synced);
  }
}
