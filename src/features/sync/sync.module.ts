import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { JobsModule } from '../jobs/index.js';
import { FollowJournal } from './pull/follow-journal.js';
import { GiveRows } from './pull/give-rows.js';
import { JournalRepository } from './pull/journal.repository.js';
import { PullChanges } from './pull/pull-changes.js';
import { ApplyMutations } from './push/apply-mutations.js';
import { ConflictRows } from './push/conflict-rows.js';
import { PushMutations } from './push/push-mutations.js';
import { StandingPusher } from './push/standing-pusher.js';
import { SyncMutationEntity } from './push/sync-mutation.entity.js';
import { SyncMutationsRepository } from './push/sync-mutations.repository.js';
import { SyncController } from './sync.controller.js';
import { SyncedRowsRepository } from './synced-rows.repository.js';

@Module({
  imports: [TypeOrmModule.forFeature([SyncMutationEntity]), JobsModule],
  controllers: [SyncController],
  providers: [SyncMutationsRepository, SyncedRowsRepository, JournalRepository, StandingPusher, ApplyMutations, ConflictRows, PushMutations, FollowJournal, GiveRows, PullChanges],
})
export class SyncModule {}
