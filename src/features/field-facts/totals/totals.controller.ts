import { Controller } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ReadRoute } from '../../../platform/http/api.js';
import { IdParam } from '../../../platform/http/id-param.js';
import { type Reply, taggedByContent } from '../../../platform/http/reply.js';
import { FieldTotalsView } from './totals.dto.js';
import { TotalsService } from './totals.service.js';

@Controller('v1/jobs')
export class FieldTotalsController {
  constructor(private readonly totals: TotalsService) {}

  @ReadRoute(FieldTotalsView, { path: ':id/field-totals', roles: EVERYONE, summary: 'Read what the crew took down for a job, summed beside what was planned', description: 'Loads, depths and materials against the survey and the lines of the quote that were accepted.' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<FieldTotalsView>> {
    return taggedByContent(await this.totals.ofJob(actor, id), {});
  }
}
