import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { type PersonSpan, WorkSumsRepository } from '../time-entries/index.js';
import { mergeSpans } from './merge-spans.js';
import { OpeningWagesService } from './opening/opening-wages.service.js';
import type { Terms } from './terms.js';
import { dayAfter, WorkCalendar, weekOf, weekOfInstant } from './work-calendar.js';
import { YearsToDate } from './years-to-date.js';

/** Where yearly caps stand. */
@Injectable()
export class EarnedService {
  constructor(
    private readonly opening: OpeningWagesService,
    private readonly work: WorkSumsRepository,
  ) {}

  /** What people had earned before the weeks of their spans; two statements, and none where no burden has a yearly cap. */
  async before(actor: Actor, spans: readonly PersonSpan[], terms: Terms): Promise<YearsToDate> {
    if (!terms.capped || spans.length === 0) return YearsToDate.none;
    const yearOf = (instant: Date): number => Number(weekOfInstant(terms.anchor, instant).lastDay.slice(0, 4));
    const years = spans.map(({ personId, from, until }) => ({ personId, from: yearOf(from), until: yearOf(until), last: until }));
    const openings = await this.opening.ofYears(actor, spans.map(({ personId }) => personId), Math.min(...years.map(({ from }) => from)), Math.max(...years.map(({ until }) => until)));
    const whole = years.map(({ personId, from, until, last }) => {
      const ends = openings.filter((one) => one.personId === personId && one.year >= from && one.year <= until).map(({ through }) => weekOf(terms.anchor, through).endsAt.getTime());
      return { personId, from: weekOf(terms.anchor, `${from}-01-01`).startsAt, until: new Date(Math.max(weekOfInstant(terms.anchor, last).endsAt.getTime(), ...ends)) };
    });
    const merged = mergeSpans(whole);
    const calendar = new WorkCalendar(terms.anchor, merged, terms.cut, openings.map(({ through }) => dayAfter(through)));
    return YearsToDate.of(await this.work.byWage(actor, merged, calendar.starts), calendar, terms, openings);
  }
}
