import { Injectable } from '@nestjs/common';
import { ChangeJobState, JobCrew, JobsService } from '../jobs/index.js';
import { AcceptQuote } from '../quotes/index.js';
import { LogTime } from '../time-entries/index.js';
import { CREWS } from './content/company.js';
import type { DemoJob, DemoWork } from './content/job.js';
import { JOBS } from './content/jobs.js';
import { crewHours, DAY_ENDS, type Stint } from './crew-hours.js';
import type { Scene } from './scene.js';

/** Nobody logs a day before it is over: the last hours are yesterday's. */
const LAST_DAY_AGO = 1;

/** The accepted quotes, and what the crews did. */
@Injectable()
export class SeedJobs {
  constructor(
    private readonly acceptQuote: AcceptQuote,
    private readonly jobs: JobsService,
    private readonly states: ChangeJobState,
    private readonly crew: JobCrew,
    private readonly logTime: LogTime,
  ) {}

  async execute(scene: Scene): Promise<void> {
    for (const job of JOBS) {
      const jobId = await this.accept(scene, job);
      if (job.work !== undefined) await this.work(scene, job.quote, jobId, job.work);
    }
  }

  private async accept(scene: Scene, { quote, acceptedBy, acceptedDaysAgo }: DemoJob): Promise<string> {
    const acceptedOn = scene.calendar.workday(acceptedDaysAgo);
    const { jobId } = await scene.on(scene.calendar.moment(acceptedDaysAgo, '12:00'), () =>
      this.acceptQuote.execute(scene.as('estimator'), scene.id(`quote ${quote}`), { acceptedBy, acceptedOn }),
    );
    return scene.note(`job ${quote}`, jobId);
  }

  private async work(scene: Scene, key: string, jobId: string, { crew, startedDaysAgo, pace, daysSoFar, late = [], notes = {} }: DemoWork): Promise<void> {
    await this.crew.join(scene.as('estimator'), jobId, CREWS[crew].map((member) => scene.id(`person ${member}`)));
    const plan = await this.jobs.planOf(scene.service, jobId);
    const quarters = plan.map(({ costCode, hours }) => ({ costCode, quarters: hours.times(4).times(pace).ceil().toNumber() }));
    const stints = crewHours({ people: CREWS[crew], quarters, startedDaysAgo, atMostDays: daysSoFar ?? startedDaysAgo - LAST_DAY_AGO + 1 });
    for (const [index, stint] of stints.entries()) {
      const first = stints.findIndex(({ costCode }) => costCode === stint.costCode) === index;
      await this.log(scene, `hours ${key} ${index}`, jobId, stint, first ? (notes[stint.costCode] ?? null) : null);
    }
    for (const { person, daysAgo, costCode, until, note } of late) {
      await this.log(scene, `late hours ${key} ${daysAgo}`, jobId, { person, daysAgo, costCode, start: DAY_ENDS, end: until, unpaidBreakMinutes: 0 }, note);
    }
    const last = stints.at(-1);
    if (last === undefined || daysSoFar !== undefined) return;
    await scene.on(scene.calendar.moment(last.daysAgo, '17:00'), () => this.states.finish(scene.as('crew-lead'), jobId));
  }

  private async log(scene: Scene, name: string, jobId: string, { person, daysAgo, costCode, start, end, unpaidBreakMinutes }: Stint, note: string | null): Promise<void> {
    const actor = scene.as(person);
    const ended = scene.calendar.moment(daysAgo, end);
    const entry = {
      id: scene.newId(name, ended), jobId, personId: actor.personId ?? '', costCode, unpaidBreakMinutes, note,
      startedAt: scene.calendar.moment(daysAgo, start).toISOString(),
      endedAt: ended.toISOString(),
    };
    await scene.on(ended, () => this.logTime.execute(actor, entry));
    scene.noteWorked({ person, daysAgo });
  }
}
