import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { patched } from '../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { toFeatureBody, toFeatureView } from './feature.mapper.js';
import { FeatureBody, FeatureListQuery, FeatureView } from './features.dto.js';
import { FeaturesService } from './features.service.js';

@Controller('v1/features')
export class FeaturesController {
  constructor(private readonly features: FeaturesService) {}

  @CreateRoute(FeatureView, { roles: OFFICE, summary: 'Enter a feature' })
  async create(@CurrentActor() actor: Actor, @Body() body: FeatureBody): Promise<Reply<FeatureView>> {
    const { row, created } = await this.features.create(actor, body);
    return made(toFeatureView(row), row.version, created);
  }

  @ListRoute(FeatureView, { roles: EVERYONE, summary: 'List the features' })
  async list(@CurrentActor() actor: Actor, @Query() query: FeatureListQuery): Promise<Page<FeatureView>> {
    return mapPage(await this.features.list(actor, query), toFeatureView);
  }

  @ReadRoute(FeatureView, { roles: EVERYONE, summary: 'Read a feature' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<FeatureView>> {
    const row = await this.features.find(actor, id);
    return tagged(toFeatureView(row), row.version);
  }

  @ChangeRoute(FeatureBody, FeatureView, { roles: OFFICE, summary: 'Change a feature' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<FeatureView>> {
    const current = await this.features.find(actor, id);
    const row = await this.features.update(actor, id, version, await patched(FeatureBody, toFeatureBody(current), patch));
    return tagged(toFeatureView(row), row.version);
  }
}
