import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import type { Page } from '../../platform/http/lists.js';
import { CompaniesService } from '../companies/index.js';
import { LoggedWorkRepository, type WaitingWork, WorkSumsRepository } from '../time-entries/index.js';
import { BurdenRatesService } from './burden/burden-rates.service.js';
import { EarnedService } from './earned.service.js';
import { type EntryPiece, entryPieces } from './entry-pieces.js';
import { mergeSpans } from './merge-spans.js';
import { type PersonWeek, personWeeks, type PlacedPiece } from './person-weeks.js';
import { WorkWeekPoliciesService } from './policy/work-week-policies.service.js';
import { Terms } from './terms.js';
import { WorkCalendar, weekOf, weekOfInstant, workdayOf } from './work-calendar.js';
import type { WorkWeeksQuery } from './work-weeks.dto.js';

/** The labor of a job on one cost code. */
export interface LaborOnCostCode {
  readonly costCode: string;
  /** Not rounded. */
  readonly hours: Decimal;
  /** Wages, overtime and burden, in the company's currency: whole minor units, its part of what people's weeks come to. */
  readonly cost: Decimal;
}

/** A week's total goes to its jobs, and what a job gets to its cost codes. */
const JOB_AND_CODE = [(piece: PlacedPiece) => piece.jobId, (piece: PlacedPiece) => piece.costCode] as const;

/** What people's hours come to by the workweek. */
@Injectable()
export class WorkWeeksService {
  constructor(
    private readonly companies: CompaniesService,
    private readonly policies: WorkWeekPoliciesService,
    private readonly rates: BurdenRatesService,
    private readonly work: LoggedWorkRepository,
    private readonly sums: WorkSumsRepository,
    private readonly earned: EarnedService,
    private readonly clock: Clock,
  ) {}

  /** The week of a day, one item for each person who worked in it, newest person first; at most seven statements. */
  async list(actor: Actor, { of, personId, limit, cursor }: WorkWeeksQuery): Promise<{ page: Page<PersonWeek<EntryPiece>>; currency: string; waiting: ReadonlyMap<string, WaitingWork> }> {
    const terms = await this.terms(actor);
    const week = weekOf(terms.anchor, of ?? workdayOf(terms.anchor, this.clock.now()));
    // One person more than asked for tells whether there is another page.
    const work = await this.work.between(actor, week.startsAt, week.endsAt, { limit: limit + 1, after: cursor ?? null, personId: personId ?? null });
    const people = [...new Set(work.map((entry) => entry.personId))];
    const spans = people.slice(0, limit).map((person) => ({ personId: person, from: week.startsAt, until: week.startsAt }));
    const calendar = new WorkCalendar(terms.anchor, [{ from: week.startsAt, until: week.startsAt }], 'days');
    const pieces = entryPieces(work, calendar).filter((piece) => spans.some((span) => span.personId === piece.personId));
    const items = personWeeks(pieces, calendar, terms, await this.earned.before(actor, spans, terms), [...JOB_AND_CODE, (piece) => piece.entryId]);
    const waiting = await this.work.waiting(actor, week.startsAt, week.endsAt, spans.map((span) => span.personId));
    return { waiting, page: { items, nextCursor: people.length > limit ? (items.at(-1)?.personId ?? null) : null }, currency: terms.currency };
  }

  /**
   * A job's part of the weeks in which people worked on it, by cost code. Over all jobs these parts add up to the
   * payroll of the weeks and the burden on it, to the cent. At most seven statements.
   */
  async laborOfJob(actor: Actor, jobId: string): Promise<LaborOnCostCode[]> {
    const terms = await this.terms(actor);
    const onJob = await this.sums.spansOnJob(actor, jobId);
    if (onJob.length === 0) return [];
    const spans = mergeSpans(onJob.map(({ personId, from, until }) => ({ personId, from: weekOfInstant(terms.anchor, from).startsAt, until: weekOfInstant(terms.anchor, until).endsAt })));
    const calendar = new WorkCalendar(terms.anchor, spans, terms.cut);
    const work = (await this.sums.byJob(actor, spans, calendar.starts)).map((sum) => ({ ...sum, workday: String(sum.place) }));
    const jobsOf = new Set(work.filter((sum) => sum.jobId === jobId).map((sum) => `${sum.personId} ${calendar.weekAt(sum.place)}`));
    const wanted = work.filter((sum) => jobsOf.has(`${sum.personId} ${calendar.weekAt(sum.place)}`));
    return onCostCodes(jobId, personWeeks(wanted, calendar, terms, await this.earned.before(actor, onJob, terms), JOB_AND_CODE));
  }

  private async terms(actor: Actor): Promise<Terms> {
    return new Terms(await this.companies.current(actor), await this.policies.all(actor), await this.rates.all(actor));
  }
}

function onCostCodes(jobId: string, weeks: readonly PersonWeek[]): LaborOnCostCode[] {
  const sums = new Map<string, LaborOnCostCode & { readonly milliseconds: number }>();
  for (const { pieces, shares } of weeks) {
    pieces.forEach(({ jobId: job, costCode, milliseconds }, index) => {
      if (job !== jobId) return;
      const before = sums.get(costCode);
      const worked = milliseconds + (before?.milliseconds ?? 0);
      sums.set(costCode, { costCode, milliseconds: worked, hours: new Decimal(worked).div(3_600_000), cost: (before?.cost ?? new Decimal(0)).plus(shares[index] ?? 0) });
    });
  }
  return [...sums.values()].map(({ costCode, hours, cost }) => ({ costCode, hours, cost }));
}
