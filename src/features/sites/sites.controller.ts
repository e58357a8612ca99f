import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { patched } from '../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { toSiteBody, toSiteView } from './site.mapper.js';
import { SiteBody, SiteListQuery, SiteView } from './sites.dto.js';
import { SitesService } from './sites.service.js';

@Controller('v1/sites')
export class SitesController {
  constructor(private readonly sites: SitesService) {}

  @CreateRoute(SiteView, { roles: OFFICE, summary: 'Enter a site' })
  async create(@CurrentActor() actor: Actor, @Body() body: SiteBody): Promise<Reply<SiteView>> {
    const { row, created } = await this.sites.create(actor, body);
    return made(toSiteView(row), row.version, created);
  }

  @ListRoute(SiteView, { roles: EVERYONE, summary: 'List the sites' })
  async list(@CurrentActor() actor: Actor, @Query() query: SiteListQuery): Promise<Page<SiteView>> {
    return mapPage(await this.sites.list(actor, query), toSiteView);
  }

  @ReadRoute(SiteView, { roles: EVERYONE, summary: 'Read a site' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<SiteView>> {
    const row = await this.sites.find(actor, id);
    return tagged(toSiteView(row), row.version);
  }

  @ChangeRoute(SiteBody, SiteView, { roles: OFFICE, summary: 'Change a site' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<SiteView>> {
    const current = await this.sites.find(actor, id);
    const row = await this.sites.update(actor, id, version, await patched(SiteBody, toSiteBody(current), patch));
    return tagged(toSiteView(row), row.version);
  }
}
