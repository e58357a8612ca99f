import { Body, Controller } from '@nestjs/common';
import { type Actor, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ActionRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { ProposalBody, ProposalView } from './proposals.dto.js';
import { ProposeWork } from './propose-work.js';

@Controller('v1/surveys')
export class ProposalsController {
  constructor(private readonly propose: ProposeWork) {}

  @ActionRoute(ProposalView, {
    path: ':id/proposal',
    roles: OFFICE,
    summary: 'Suggest labor and parts for a scope',
    description: 'Labor by the rules in force on the survey\'s date, parts from the catalog by their attributes, with alternatives, and with the reason for each part that would not do. Each labor item shows the hours that a quote would plan. Nothing is kept; `draft` is in the form that POST /v1/quotes takes, in sections by phase and option.',
  })
  create(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: ProposalBody): Promise<ProposalView> {
    return this.propose.execute(actor, id, body);
  }
}
