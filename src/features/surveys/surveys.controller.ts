import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE, LEADS, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import type { Page } from '../../platform/http/lists.js';
import { patched } from '../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { toSurveyBody, toSurveyView } from './survey.mapper.js';
import { SurveyBody, SurveyListQuery, SurveySummary, SurveyView } from './surveys.dto.js';
import { SurveysService } from './surveys.service.js';

@Controller('v1/surveys')
export class SurveysController {
  constructor(private readonly surveys: SurveysService) {}

  @CreateRoute(SurveyView, { roles: LEADS, summary: 'Enter a survey' })
  async create(@CurrentActor() actor: Actor, @Body() body: SurveyBody): Promise<Reply<SurveyView>> {
    const { row, created } = await this.surveys.create(actor, body);
    return made(toSurveyView(row), row.version, created);
  }

  @ListRoute(SurveySummary, { roles: EVERYONE, summary: 'List the surveys' })
  list(@CurrentActor() actor: Actor, @Query() query: SurveyListQuery): Promise<Page<SurveySummary>> {
    return this.surveys.list(actor, query);
  }

  @ReadRoute(SurveyView, { roles: EVERYONE, summary: 'Read a survey' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<SurveyView>> {
    const row = await this.surveys.find(actor, id);
    return tagged(toSurveyView(row), row.version);
  }

  @ChangeRoute(SurveyBody, SurveyView, { roles: OFFICE, summary: 'Change a survey', description: 'Objects are merged too: to give the outline another shape, set the fields of the old shape to null. Lists are replaced as a whole.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<SurveyView>> {
    const current = await this.surveys.find(actor, id);
    const row = await this.surveys.update(actor, id, version, await patched(SurveyBody, toSurveyBody(current), patch));
    return tagged(toSurveyView(row), row.version);
  }
}
