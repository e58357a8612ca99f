import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { CompaniesModule } from '../companies/index.js';
import { JobsModule } from '../jobs/index.js';
import { PeopleModule } from '../people/index.js';
import { CorrectTime } from './correct-time.js';
import { LockedPeriod } from './lock/locked-period.js';
import { TimeLockEntity } from './lock/time-lock.entity.js';
import { LogManyHours } from './log/log-many-hours.js';
import { LogTime } from './log/log-time.js';
import { PaidPeople } from './paid-people.js';
import { TimeEntriesController } from './time-entries.controller.js';
import { TimeEntriesRepository } from './time-entries.repository.js';
import { TimeEntriesService } from './time-entries.service.js';
import { TimeEntryEntity } from './time-entry.entity.js';
import { TimeEntrySync } from './time-entry-sync.js';

@Module({
  imports: [TypeOrmModule.forFeature([TimeEntryEntity, TimeLockEntity]), CompaniesModule, PeopleModule, JobsModule],
  controllers: [TimeEntriesController],
  providers: [TimeEntriesRepository, TimeEntriesService, PaidPeople, LockedPeriod, LogManyHours, LogTime, CorrectTime, TimeEntrySync],
  exports: [TimeEntriesService, LogTime, LogManyHours],
})
export class TimeEntriesModule {}
