import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { CompaniesModule } from '../companies/index.js';
import { LoggedWorkModule } from '../time-entries/index.js';
import { BurdenRateEntity } from './burden/burden-rate.entity.js';
import { BurdenRatesController } from './burden/burden-rates.controller.js';
import { BurdenRatesService } from './burden/burden-rates.service.js';
import { EarnedService } from './earned.service.js';
import { OpeningWagesController } from './opening/opening-wages.controller.js';
import { OpeningWagesEntity } from './opening/opening-wages.entity.js';
import { OpeningWagesService } from './opening/opening-wages.service.js';
import { WorkWeekPoliciesController } from './policy/work-week-policies.controller.js';
import { WorkWeekPoliciesService } from './policy/work-week-policies.service.js';
import { WorkWeekPolicyEntity } from './policy/work-week-policy.entity.js';
import { WorkWeeksController } from './work-weeks.controller.js';
import { WorkWeeksService } from './work-weeks.service.js';

@Module({
  imports: [TypeOrmModule.forFeature([WorkWeekPolicyEntity, BurdenRateEntity, OpeningWagesEntity]), CompaniesModule, LoggedWorkModule],
  controllers: [WorkWeekPoliciesController, BurdenRatesController, OpeningWagesController, WorkWeeksController],
  providers: [WorkWeekPoliciesService, BurdenRatesService, OpeningWagesService, EarnedService, WorkWeeksService],
  exports: [WorkWeeksService, WorkWeekPoliciesService, BurdenRatesService],
})
export class WorkWeeksModule {}
