import { Injectable } from '@nestjs/common';
import type { Quantity } from '../../domain/quantity/index.js';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { BlockerDays } from '../schedule/index.js';
import { DAY_SHEET } from './day.sql.js';
import type { DayMaterialView, DayPersonView, DayPunchItemView, DayVisitView } from './day-job.view.js';

/** A job as the statement gives it; a list without rows is null. */
export interface DayJobRow {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  readonly state: string;
  readonly timeZone: string;
  readonly featureName: string | null;
  readonly site: { address: string; latitude: number | null; longitude: number | null; accessNotes: string | null; hazards: string | null } | null;
  readonly visits: DayVisitView[] | null;
  /** The last day of the person's visits, YYYY-MM-DD at the site; null without one. */
  readonly lastDay: string | null;
  readonly blockers: BlockerDays[] | null;
  readonly costCodes: { costCode: string; planned: string; seconds: string }[] | null;
  readonly crew: DayPersonView[] | null;
  readonly materials: DayMaterialView[] | null;
  readonly keep: { kind: string; quantity: Quantity; note?: string }[] | null;
  readonly punchItems: DayPunchItemView[] | null;
}

export interface DayRow {
  readonly id: string;
  readonly name: string;
  readonly jobs: DayJobRow[] | null;
}

/**
 * Reads the day in one statement over the tables of other slices, which elsewhere only those read: with one bar of
 * signal the crew wait for the sum of all round trips, and ten services would make at least as many.
 */
@Injectable()
export class DayRepository {
  constructor(private readonly db: TenantDatabase) {}

  /** @returns null when there is no such person */
  async find(actor: Actor, personId: string, date: string): Promise<DayRow | null> {
    const [row] = await this.db.read(actor, (manager) => manager.query<DayRow[]>(DAY_SHEET, [actor.companyId, personId, date]));
    return row ?? null;
  }
}
