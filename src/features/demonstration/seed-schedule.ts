import { Injectable } from '@nestjs/common';
import { BlockersService, DaysOffService, PlanVisits } from '../schedule/index.js';
import { BLOCKERS, DAYS_OFF, type DemoVisit, VISITS } from './content/schedule.js';
import type { Scene } from './scene.js';

/** When the plan was made, in working days before the day the demonstration is made on: before its first visit. */
const PLANNED_AGO = 6;

/** Who goes where and when, who is away, and what a job waits for. */
@Injectable()
export class SeedSchedule {
  constructor(
    private readonly visits: PlanVisits,
    private readonly daysOff: DaysOffService,
    private readonly blockers: BlockersService,
  ) {}

  async execute(scene: Scene): Promise<void> {
    const planned = scene.calendar.moment(PLANNED_AGO, '16:30');
    await scene.on(planned, async () => {
      for (const visit of VISITS) await this.plan(scene, planned, visit);
      await this.enterDaysOff(scene, planned);
      await this.enterBlockers(scene, planned);
    });
  }

  private async plan(scene: Scene, planned: Date, { quote, days, people, cancelledBecause, ...visit }: DemoVisit): Promise<void> {
    for (const day of days) {
      const id = scene.newId(`visit ${quote} ${day} ${visit.startTime}`, planned);
      await this.visits.create(scene.as('estimator'), {
        id, jobId: scene.id(`job ${quote}`), day: scene.calendar.workday(-day), personIds: people.map((key) => scene.id(`person ${key}`)), ...visit,
      });
      if (cancelledBecause !== undefined) await this.visits.cancel(scene.as('estimator'), id, cancelledBecause);
    }
  }

  private async enterDaysOff(scene: Scene, planned: Date): Promise<void> {
    for (const { person, firstDay, lastDay, note } of DAYS_OFF) {
      await this.daysOff.create(scene.as(person), {
        id: scene.newId(`days off ${person} ${firstDay}`, planned), personId: scene.id(`person ${person}`), note,
        firstDay: scene.calendar.workday(-firstDay), lastDay: scene.calendar.workday(-lastDay),
      });
    }
  }

  private async enterBlockers(scene: Scene, planned: Date): Promise<void> {
    const day = (ahead: number | undefined): string | null => (ahead === undefined ? null : scene.calendar.workday(-ahead));
    for (const { quote, requested, clear, cleared, validUntil, ...blocker } of BLOCKERS) {
      await this.blockers.create(scene.as('estimator'), {
        id: scene.newId(`blocker ${quote} ${blocker.kind}`, planned), jobId: scene.id(`job ${quote}`), ...blocker,
        requestedOn: day(requested), clearOn: day(clear), clearedOn: day(cleared), validUntil: day(validUntil),
      });
    }
  }
}
