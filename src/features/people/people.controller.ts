import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { ListQuery, mapPage, type Page } from '../../platform/http/lists.js';
import { patched } from '../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { PersonBody, PersonView } from './people.dto.js';
import { PeopleService } from './people.service.js';
import { toPersonBody, toPersonView } from './person.mapper.js';

@Controller('v1/people')
export class PeopleController {
  constructor(private readonly people: PeopleService) {}

  @CreateRoute(PersonView, { roles: ['owner'], summary: 'Enter a person', description: 'The person can sign in once a password is set.' })
  async create(@CurrentActor() actor: Actor, @Body() body: PersonBody): Promise<Reply<PersonView>> {
    const { row, created } = await this.people.create(actor, body);
    return made(toPersonView(actor, row), row.version, created);
  }

  @ListRoute(PersonView, { roles: EVERYONE, summary: 'List the people' })
  async list(@CurrentActor() actor: Actor, @Query() query: ListQuery): Promise<Page<PersonView>> {
    return mapPage(await this.people.list(actor, query), (row) => toPersonView(actor, row));
  }

  @ReadRoute(PersonView, { roles: EVERYONE, summary: 'Read a person' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<PersonView>> {
    const row = await this.people.find(actor, id);
    return tagged(toPersonView(actor, row), row.version);
  }

  @ChangeRoute(PersonBody, PersonView, { roles: ['owner'], summary: 'Change a person', description: 'A new wage holds for the hours entered from now on. A person made inactive is signed out within seconds, and their devices are revoked.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<PersonView>> {
    const current = await this.people.find(actor, id);
    const row = await this.people.update(actor, id, version, await patched(PersonBody, toPersonBody(current), patch));
    return tagged(toPersonView(actor, row), row.version);
  }
}
