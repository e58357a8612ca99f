import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { CompaniesModule } from '../companies/index.js';
import { JobsModule } from '../jobs/index.js';
import { PeopleModule } from '../people/index.js';
import { ApprovalsController } from './approval/approvals.controller.js';
import { ApprovalsRepository } from './approval/approvals.repository.js';
import { ApproveDay } from './approval/approve-day.js';
import { CorrectTime } from './correct-time.js';
import { ReleaseHeld } from './held/release-held.js';
import { LockedPeriod } from './lock/locked-period.js';
import { MoveLock } from './lock/move-lock.js';
import { TimeLockController } from './lock/time-lock.controller.js';
import { TimeLockEntity } from './lock/time-lock.entity.js';
import { LogBatch } from './log/log-batch.js';
import { LogManyHours } from './log/log-many-hours.js';
import { LogTime } from './log/log-time.js';
import { PaidPeople } from './paid-people.js';
import { StopTime } from './stop-time.js';
import { TimeEntriesController } from './time-entries.controller.js';
import { TimeEntriesRepository } from './time-entries.repository.js';
import { TimeEntriesService } from './time-entries.service.js';
import { TimeEntryEntity } from './time-entry.entity.js';
import { TimeEntryStepsController } from './time-entry-steps.controller.js';
import { TimeEntrySync } from './sync/time-entry-sync.js';
import { TimeMutations } from './sync/time-mutations.js';
import { TimeEntryViews } from './time-entry-views.js';
import { EntryVersions } from './versions/entry-versions.js';

@Module({
  imports: [TypeOrmModule.forFeature([TimeEntryEntity, TimeLockEntity]), CompaniesModule, PeopleModule, JobsModule],
  controllers: [TimeEntriesController, TimeEntryStepsController, ApprovalsController, TimeLockController],
  providers: [
    TimeEntriesRepository, TimeEntriesService, TimeEntryViews, PaidPeople, LogManyHours, LogTime, LogBatch, StopTime, CorrectTime, ReleaseHeld, EntryVersions,
    ApprovalsRepository, ApproveDay, LockedPeriod, MoveLock, TimeEntrySync, TimeMutations,
  ],
  exports: [TimeEntriesService, LogTime, LogManyHours, ApproveDay, MoveLock],
})
export class TimeEntriesModule {}
