import { Controller, Query } from '@nestjs/common';
import { type Actor, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ListRoute } from '../../platform/http/api.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { toWorkWeekView } from './work-week.mapper.js';
import { WorkWeeksQuery, WorkWeekView } from './work-weeks.dto.js';
import { WorkWeeksService } from './work-weeks.service.js';

@Controller('v1/work-weeks')
export class WorkWeeksController {
  constructor(private readonly weeks: WorkWeeksService) {}

  @ListRoute(WorkWeekView, { roles: OFFICE, summary: 'What people\'s hours of a week come to', description: 'Hours, overtime, pay and burden of each person who worked in the week, each with its working, and by job and cost code. It supports payroll and replaces no advice.' })
  async list(@CurrentActor() actor: Actor, @Query() query: WorkWeeksQuery): Promise<Page<WorkWeekView>> {
    const { page, currency, waiting } = await this.weeks.list(actor, query);
    return mapPage(page, (week) => toWorkWeekView(week, currency, waiting.get(week.personId)));
  }
}
