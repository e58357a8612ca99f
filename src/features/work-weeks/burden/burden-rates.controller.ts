import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, OFFICE } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../../platform/http/api.js';
import { IdParam } from '../../../platform/http/id-param.js';
import { IfMatch } from '../../../platform/http/if-match.js';
import { mapPage, type Page } from '../../../platform/http/lists.js';
import { patched } from '../../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../../platform/http/reply.js';
import { toBurdenRateBody, toBurdenRateView } from './burden-rate.mapper.js';
import { BurdenRateBody, BurdenRateListQuery, BurdenRateView } from './burden-rates.dto.js';
import { BurdenRatesService } from './burden-rates.service.js';

@Controller('v1/burden-rates')
export class BurdenRatesController {
  constructor(private readonly rates: BurdenRatesService) {}

  @CreateRoute(BurdenRateView, { roles: OFFICE, summary: 'Make a burden rate', description: 'A tax, contribution or insurance that the employer pays on wages. Rates and caps change every year and by state: take them from the authority or the insurer.' })
  async create(@CurrentActor() actor: Actor, @Body() body: BurdenRateBody): Promise<Reply<BurdenRateView>> {
    const { row, created } = await this.rates.create(actor, body);
    return made(toBurdenRateView(row), row.version, created);
  }

  @ListRoute(BurdenRateView, { roles: OFFICE, summary: 'List the burden rates' })
  async list(@CurrentActor() actor: Actor, @Query() query: BurdenRateListQuery): Promise<Page<BurdenRateView>> {
    return mapPage(await this.rates.list(actor, query), toBurdenRateView);
  }

  @ReadRoute(BurdenRateView, { roles: OFFICE, summary: 'Read a burden rate' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<BurdenRateView>> {
    const row = await this.rates.find(actor, id);
    return tagged(toBurdenRateView(row), row.version);
  }

  @ChangeRoute(BurdenRateBody, BurdenRateView, { roles: OFFICE, summary: 'Change a burden rate', description: 'For a mistake: the labor cost of past weeks follows. For a new rate, make one with its own `effectiveFrom`.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<BurdenRateView>> {
    const current = await this.rates.find(actor, id);
    const row = await this.rates.update(actor, id, version, await patched(BurdenRateBody, toBurdenRateBody(current), patch));
    return tagged(toBurdenRateView(row), row.version);
  }
}
