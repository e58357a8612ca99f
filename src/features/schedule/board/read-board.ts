import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { CompaniesService } from '../../companies/index.js';
import { toBlockerView } from '../blockers/blocker.mapper.js';
import { BlockersService } from '../blockers/blockers.service.js';
import { toDaysOffView } from '../days-off/day-off.mapper.js';
import { DaysOffService } from '../days-off/days-off.service.js';
import { VisitsService } from '../visits/visits.service.js';
import type { BoardView } from './board.dto.js';
import { BoardRepository } from './board.repository.js';
import { parseWeek, type Week, weekOf } from './iso-week.js';

/** A firm of fifty people with four visits each on every day has 1,000 of a kind; the answer has an end. */
const MOST_OF_A_KIND = 1_000;

/** A week in one request, with a fixed number of statements whatever its size. */
@Injectable()
export class ReadBoard {
  constructor(
    private readonly board: BoardRepository,
    private readonly visits: VisitsService,
    private readonly daysOff: DaysOffService,
    private readonly blockers: BlockersService,
    private readonly companies: CompaniesService,
    private readonly clock: Clock,
  ) {}

  /** @param name a week that parseWeek knows; the company's present one unless told */
  async execute(actor: Actor, name: string | undefined): Promise<BoardView> {
    const { week, firstDay, lastDay } = await this.weekNamed(actor, name);
    const limit = MOST_OF_A_KIND + 1;
    const visits = await this.visits.ofDays(actor, firstDay, lastDay, limit);
    const shown = visits.slice(0, MOST_OF_A_KIND);
    const jobIds = [...new Set(shown.map(({ jobId }) => jobId))];
    const people = await this.board.people(actor, limit);
    const daysOff = await this.daysOff.between(actor, firstDay, lastDay, limit);
    const blockers = await this.blockers.ofJobs(actor, jobIds, limit);
    return {
      week, firstDay, lastDay,
      people: people.slice(0, MOST_OF_A_KIND),
      jobs: await this.board.jobs(actor, jobIds),
      visits: await this.visits.withWarnings(actor, shown),
      daysOff: daysOff.slice(0, MOST_OF_A_KIND).map(toDaysOffView),
      blockers: blockers.slice(0, MOST_OF_A_KIND).map(toBlockerView),
      cut: [visits, people, daysOff, blockers].some((rows) => rows.length > MOST_OF_A_KIND),
    };
  }

  private async weekNamed(actor: Actor, name: string | undefined): Promise<Week> {
    const named = name === undefined ? null : parseWeek(name);
    return named ?? weekOf(this.clock.today((await this.companies.current(actor)).timeZone));
  }
}
