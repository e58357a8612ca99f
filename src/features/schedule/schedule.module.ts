import { Module, type OnModuleInit } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { EVERYONE } from '../../platform/auth/actor.js';
import { SyncedKinds } from '../../platform/sync/synced-kinds.js';
import { CompaniesModule } from '../companies/index.js';
import { JobsModule } from '../jobs/index.js';
import { BlockerEntity } from './blockers/blocker.entity.js';
import { toBlockerView } from './blockers/blocker.mapper.js';
import { BlockersController } from './blockers/blockers.controller.js';
import { BlockersService } from './blockers/blockers.service.js';
import { BoardController } from './board/board.controller.js';
import { BoardRepository } from './board/board.repository.js';
import { ReadBoard } from './board/read-board.js';
import { DayOffEntity } from './days-off/day-off.entity.js';
import { toDaysOffView } from './days-off/day-off.mapper.js';
import { DaysOffController } from './days-off/days-off.controller.js';
import { DaysOffService } from './days-off/days-off.service.js';
import { PlanVisits } from './visits/plan-visits.js';
import { VisitEntity } from './visits/visit.entity.js';
import { VisitPersonEntity } from './visits/visit-person.entity.js';
import { VisitsController } from './visits/visits.controller.js';
import { VisitsRepository } from './visits/visits.repository.js';
import { VisitsService } from './visits/visits.service.js';

@Module({
  imports: [TypeOrmModule.forFeature([VisitEntity, VisitPersonEntity, DayOffEntity, BlockerEntity]), CompaniesModule, JobsModule],
  controllers: [VisitsController, DaysOffController, BlockersController, BoardController],
  providers: [VisitsRepository, VisitsService, PlanVisits, DaysOffService, BlockersService, BoardRepository, ReadBoard],
  exports: [VisitsService, PlanVisits, DaysOffService, BlockersService],
})
export class ScheduleModule implements OnModuleInit {
  constructor(
    private readonly synced: SyncedKinds,
    private readonly visits: VisitsService,
  ) {}

  /** Phones keep the visits and blockers of their jobs, and their own person's days off. */
  onModuleInit(): void {
    this.synced.add({ kind: 'visit', table: 'visit', entity: VisitEntity, belongsTo: { jobs: 't.job_id' }, view: (actor, rows) => this.visits.planned(actor, rows) });
    this.synced.add({ kind: 'blocker', table: 'blocker', entity: BlockerEntity, belongsTo: { jobs: 't.job_id' }, view: (_actor, rows) => rows.map(toBlockerView) });
    this.synced.add({ kind: 'day-off', table: 'day_off', entity: DayOffEntity, belongsTo: 'company', own: { column: 'person_id', only: EVERYONE }, view: (_actor, rows) => rows.map(toDaysOffView) });
  }
}
