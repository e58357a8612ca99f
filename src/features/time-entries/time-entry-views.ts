import { Injectable } from '@nestjs/common';
import { type Actor, seesMoney } from '../../platform/auth/actor.js';
import { CompaniesService } from '../companies/index.js';
import type { TimeEntryView } from './time-entries.dto.js';
import type { TimeEntryEntity } from './time-entry.entity.js';
import { toTimeEntryView } from './time-entry.mapper.js';

/** Entries as the actor may see them. */
@Injectable()
export class TimeEntryViews {
  constructor(private readonly companies: CompaniesService) {}

  /** One statement at most, whatever their number. */
  async of(actor: Actor, rows: readonly TimeEntryEntity[]): Promise<TimeEntryView[]> {
    const currency = await this.currency(actor);
    return rows.map((row) => toTimeEntryView(row, currency));
  }

  async one(actor: Actor, row: TimeEntryEntity): Promise<TimeEntryView> {
    return toTimeEntryView(row, await this.currency(actor));
  }

  private async currency(actor: Actor): Promise<string | null> {
    return seesMoney(actor) ? (await this.companies.current(actor)).currency : null;
  }
}
