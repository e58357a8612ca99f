import { Body, Controller } from '@nestjs/common';
import { type Actor, OFFICE } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ActionRoute } from '../../../platform/http/api.js';
import { IdParam } from '../../../platform/http/id-param.js';
import { type Reply, tagged } from '../../../platform/http/reply.js';
import { ChangeRequestAnswerBody, ChangeRequestView } from './change-request.dto.js';
import { ChangeRequestsService } from './change-requests.service.js';

@Controller('v1/change-requests')
export class ChangeRequestAnswersController {
  constructor(private readonly requests: ChangeRequestsService) {}

  @ActionRoute(ChangeRequestView, { path: ':id/answer', roles: OFFICE, summary: 'Answer a change request', description: 'Tells the crew what becomes of it. It makes no change order: that is priced and accepted on its own.' })
  async answer(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: ChangeRequestAnswerBody): Promise<Reply<ChangeRequestView>> {
    const row = await this.requests.answer(actor, id, body);
    return tagged(this.requests.view(row), row.version);
  }
}
