import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { ChangeJobState } from './change-job-state.js';
import { ChargeJob } from './charge-job.js';
import { ChargeHours } from './charge-hours.js';
import { CrewController } from './crew/crew.controller.js';
import { JobCrew } from './crew/job-crew.js';
import { JobMemberEntity } from './crew/job-member.entity.js';
import { SetCrew } from './crew/set-crew.js';
import { JobEntity } from './job.entity.js';
import { JobPlanEntity } from './job-plan.entity.js';
import { JobSync } from './job-sync.js';
import { JobsController } from './jobs.controller.js';
import { JobsRepository } from './jobs.repository.js';
import { JobsService } from './jobs.service.js';

@Module({
  imports: [TypeOrmModule.forFeature([JobEntity, JobPlanEntity, JobMemberEntity])],
  controllers: [JobsController, CrewController],
  providers: [JobsRepository, JobsService, ChargeJob, ChargeHours, ChangeJobState, JobCrew, SetCrew, JobSync],
  exports: [JobsService, ChargeJob, ChargeHours, ChangeJobState, JobCrew],
})
export class JobsModule {}
