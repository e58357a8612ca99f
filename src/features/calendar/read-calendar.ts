import { Injectable } from '@nestjs/common';
import { Clock } from '../../platform/clock/clock.js';
import { CalendarFeedsService } from './calendar-feeds.service.js';
import { calendarText } from './calendar-text.js';
import { CalendarRepository } from './calendar.repository.js';

const DAYS_BACK = 60;
const MS_PER_DAY = 86_400_000;
/** Three visits on each day of a year, and the sixty days before. */
const MOST_VISITS = 1_300;

export interface CalendarFile {
  readonly text: string;
  /** The last change of a visit in it, or of what is told of its place; null when it holds none. */
  readonly lastModified: Date | null;
}

@Injectable()
export class ReadCalendar {
  constructor(
    private readonly feeds: CalendarFeedsService,
    private readonly calendar: CalendarRepository,
    private readonly clock: Clock,
  ) {}

  /** The calendar that a token opens; null for a token of none, of a revoked one, or of somebody who left. */
  async execute(token: string): Promise<CalendarFile | null> {
    const feed = await this.feeds.open(token);
    if (feed === null) return null;
    const since = new Date(this.clock.now().getTime() - DAYS_BACK * MS_PER_DAY);
    const visits = await this.calendar.visitsOf({ companyId: feed.companyId, personId: feed.personId, since, limit: MOST_VISITS });
    if (visits === null) return null;
    const changes = visits.map(({ changedAt }) => changedAt.getTime());
    return { text: await calendarText(visits), lastModified: changes.length === 0 ? null : new Date(Math.max(...changes)) };
  }
}
