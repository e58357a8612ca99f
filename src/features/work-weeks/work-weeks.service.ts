import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import type { Page } from '../../platform/http/lists.js';
import { CompaniesService } from '../companies/index.js';
import { LoggedWorkRepository, type Reach } from '../time-entries/index.js';
import { BurdenRatesService } from './burden/burden-rates.service.js';
import { type PersonWeek, personWeeks } from './person-weeks.js';
import { WorkWeekPoliciesService } from './policy/work-week-policies.service.js';
import { Terms } from './terms.js';
import { weekOf, workdayOf } from './work-calendar.js';
import type { WorkWeeksQuery } from './work-weeks.dto.js';

/** The labor of a job on one cost code. */
export interface LaborOnCostCode {
  readonly costCode: string;
  /** Not rounded. */
  readonly hours: Decimal;
  /** Wages, overtime and burden, in the company's currency: whole minor units, its part of what people's weeks come to. */
  readonly cost: Decimal;
}

/** What people's hours come to by the workweek. */
@Injectable()
export class WorkWeeksService {
  constructor(
    private readonly companies: CompaniesService,
    private readonly policies: WorkWeekPoliciesService,
    private readonly rates: BurdenRatesService,
    private readonly work: LoggedWorkRepository,
    private readonly clock: Clock,
  ) {}

  /** The week of a day, one item for each person who worked in it, newest person first; four statements. */
  async list(actor: Actor, { of, personId, limit, cursor }: WorkWeeksQuery): Promise<{ page: Page<PersonWeek>; currency: string }> {
    const terms = await this.terms(actor);
    const week = weekOf(terms.anchor, of ?? workdayOf(terms.anchor, this.clock.now()));
    // One person more than asked for tells whether there is another page.
    const work = await this.work.between(actor, week.startsAt, week.endsAt, { limit: limit + 1, after: cursor ?? null, personId: personId ?? null }, reachOf(terms));
    const found = personWeeks(work, terms, ({ firstDay }) => firstDay === week.firstDay);
    const items = found.slice(0, limit);
    return { page: { items, nextCursor: found.length > limit ? (items.at(-1)?.personId ?? null) : null }, currency: terms.currency };
  }

  /**
   * A job's part of the weeks in which people worked on it, by cost code. Over all jobs these parts add up to the
   * payroll of the weeks and the burden on it, to the cent. Four statements.
   */
  async laborOfJob(actor: Actor, jobId: string): Promise<LaborOnCostCode[]> {
    const terms = await this.terms(actor);
    const work = await this.work.ofPeopleOnJob(actor, jobId, reachOf(terms));
    const sums = new Map<string, { costCode: string; minutes: Decimal; cost: Decimal }>();
    for (const { pieces, shares } of personWeeks(work, terms, (_week, parts) => parts.some((piece) => piece.jobId === jobId))) {
      pieces.forEach((piece, index) => {
        if (piece.jobId !== jobId) return;
        const { minutes, cost } = sums.get(piece.costCode) ?? { minutes: new Decimal(0), cost: new Decimal(0) };
        sums.set(piece.costCode, { costCode: piece.costCode, minutes: minutes.plus(piece.minutes), cost: cost.plus(shares[index] ?? 0) });
      });
    }
    return [...sums.values()].map(({ costCode, minutes, cost }) => ({ costCode, hours: minutes.div(60), cost }));
  }

  private async terms(actor: Actor): Promise<Terms> {
    return new Terms(await this.companies.current(actor), await this.policies.all(actor), await this.rates.all(actor));
  }
}

function reachOf(terms: Terms): Reach {
  return terms.capped ? 'year' : 'weeks';
}
