import { Body, Controller } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ChangeRoute, ReadRoute } from '../../platform/http/api.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { patched } from '../../platform/http/merge-patch.js';
import { type Reply, tagged } from '../../platform/http/reply.js';
import { CompaniesService } from './companies.service.js';
import { CompanyBody, CompanyView } from './companies.dto.js';
import { toCompanyBody, toCompanyView } from './company.mapper.js';

@Controller('v1/company')
export class CompaniesController {
  constructor(private readonly companies: CompaniesService) {}

  @ReadRoute(CompanyView, { path: '', roles: EVERYONE, summary: 'The company and its settings' })
  async read(@CurrentActor() actor: Actor): Promise<Reply<CompanyView>> {
    const row = await this.companies.current(actor);
    return tagged(toCompanyView(actor, row), row.version);
  }

  @ChangeRoute(CompanyBody, CompanyView, { path: '', roles: ['owner'], summary: 'Change the company\'s settings', description: 'What was priced and issued before stays as it is.' })
  async change(@CurrentActor() actor: Actor, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<CompanyView>> {
    const current = await this.companies.current(actor);
    const row = await this.companies.update(actor, version, await patched(CompanyBody, toCompanyBody(current), patch));
    return tagged(toCompanyView(actor, row), row.version);
  }
}
