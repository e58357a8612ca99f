import { Injectable } from '@nestjs/common';
import { type Actor, LEADS } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { Problem } from '../../platform/http/problem.js';
import { notFound } from '../../platform/http/problems.js';
import { CompaniesService } from '../companies/index.js';
import { toDaySheet } from './day.mapper.js';
import { DayRepository } from './day.repository.js';
import type { DayQuery } from './day.dto.js';
import type { DaySheetView } from './day.view.js';

/** What a person needs for a day. */
@Injectable()
export class DayService {
  constructor(
    private readonly days: DayRepository,
    private readonly companies: CompaniesService,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem 403 when crew ask for somebody else's day, 404 when there is no such person */
  async find(actor: Actor, { personId, date }: DayQuery): Promise<DaySheetView> {
    const whose = personId?.toLowerCase() ?? actor.personId;
    if (whose !== actor.personId && !LEADS.includes(actor.role)) {
      throw new Problem('not-allowed', 'Crew see their own day. A crew lead sees that of others.', [{ pointer: '/personId', detail: 'must be your own id' }]);
    }
    const day = date ?? this.clock.today((await this.companies.current(actor)).timeZone);
    const row = whose === null ? null : await this.days.find(actor, whose, day);
    if (row === null) throw notFound('person');
    return toDaySheet(row, day);
  }
}
