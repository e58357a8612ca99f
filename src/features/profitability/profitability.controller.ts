import { Controller } from '@nestjs/common';
import { type Actor, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { ProfitabilityView } from './profitability.dto.js';
import { toProfitabilityView } from './profitability.mapper.js';
import { ProfitabilityService } from './profitability.service.js';

@Controller('v1/jobs')
export class ProfitabilityController {
  constructor(private readonly profitability: ProfitabilityService) {}

  @ReadRoute(ProfitabilityView, { path: ':id/profitability', roles: OFFICE, summary: 'Whether a job makes money', description: 'Contract, billing, costs, margin and hours as of now; voided hours, costs, invoices and payments are left out.' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<ProfitabilityView> {
    return toProfitabilityView(await this.profitability.ofJob(actor, id));
  }
}
