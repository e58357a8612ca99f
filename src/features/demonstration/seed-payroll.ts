import { Injectable } from '@nestjs/common';
import { ApproveDay, LogTime, MoveLock } from '../time-entries/index.js';
import { BurdenRatesService, WorkWeekPoliciesService } from '../work-weeks/index.js';
import { BURDEN, WORK_WEEK } from './content/payroll.js';
import type { Scene } from './scene.js';

/** Working days before the day the demonstration is made on. */
const COMPANY_BEGAN_AGO = 600;
/** Hours this old or older are approved; those of the last two days wait for somebody to look at them. */
const APPROVED_AGO = 3;
const LOCKED_AGO = 21;
const RUNNING_MINUTES = 95;

/** How weeks are reckoned, which hours are approved and locked, and who is at work right now. */
@Injectable()
export class SeedPayroll {
  constructor(
    private readonly policies: WorkWeekPoliciesService,
    private readonly burden: BurdenRatesService,
    private readonly days: ApproveDay,
    private readonly lock: MoveLock,
    private readonly logTime: LogTime,
  ) {}

  async execute(scene: Scene, now: Date): Promise<void> {
    const owner = scene.as('owner');
    const began = scene.calendar.moment(COMPANY_BEGAN_AGO, '08:30');
    const effectiveFrom = scene.calendar.workday(COMPANY_BEGAN_AGO);
    await this.policies.create(owner, { id: scene.newId('work week', began), ...WORK_WEEK, effectiveFrom });
    for (const rate of BURDEN) await this.burden.create(owner, { id: scene.newId(`burden ${rate.code}`, began), ...rate, effectiveFrom });
    await this.settle(scene);
    await this.start(scene, now);
  }

  /** The day after, each evening; the months before were then locked. */
  private async settle(scene: Scene): Promise<void> {
    const owner = scene.as('owner');
    for (const { person, daysAgo } of scene.daysWorked()) {
      if (daysAgo < APPROVED_AGO) continue;
      await scene.on(scene.calendar.moment(daysAgo - 1, '18:30'), () => this.days.approve(owner, { personId: scene.id(`person ${person}`), day: scene.calendar.workday(daysAgo) }));
    }
    await scene.on(scene.calendar.moment(APPROVED_AGO, '19:00'), () => this.lock.execute(owner, scene.calendar.workday(LOCKED_AGO)));
  }

  /** One of the crew is at work, whatever the time of day the demonstration is made at. */
  private async start(scene: Scene, now: Date): Promise<void> {
    const started = new Date(Math.floor(now.getTime() / 60_000 - RUNNING_MINUTES) * 60_000);
    const actor = scene.as('crew2');
    await this.logTime.execute(actor, { id: scene.newId('running hours', started), jobId: scene.id('job fish'), personId: actor.personId ?? '', costCode: 'plumbing', startedAt: started.toISOString() });
  }
}
