import { Body, Controller, Inject, Query, type Type } from '@nestjs/common';
import { type Actor, EVERYONE, type Role } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ActionRoute, CreateRoute, ListRoute, ReadRoute } from '../../../platform/http/api.js';
import { IdParam } from '../../../platform/http/id-param.js';
import { mapPage, type Page } from '../../../platform/http/lists.js';
import { made, type Reply, tagged } from '../../../platform/http/reply.js';
import { ReasonBody } from '../../jobs/index.js';
import { type FactRecord, type FactRequest, FactsQuery } from './fact.dto.js';
import type { FactEntity } from './fact.entity.js';
import type { FactService } from './fact.service.js';

interface Family<B> {
  /** In the path: `loads`. */
  readonly path: string;
  readonly body: Type<B>;
  readonly view: Type<object>;
  readonly roles: readonly Role[];
  /** One of them in words: "a load hauled". */
  readonly one: string;
  /** All of them in words: "the loads hauled". */
  readonly all: string;
  readonly description: string;
}

/** The routes of one kind of fact: take it down, list, read, void. */
export function factController<E extends FactEntity, B extends FactRequest, V extends FactRecord>(service: Type<FactService<E, B, V>>, family: Family<B>): Type {
  const { path, view, one } = family;

  @Controller(`v1/${path}`)
  class FactController {
    constructor(@Inject(service) private readonly facts: FactService<E, B, V>) {}

    @CreateRoute(view, { roles: family.roles, summary: `Take down ${one}`, description: family.description })
    async create(@CurrentActor() actor: Actor, @Body() body: object): Promise<Reply<V>> {
      const { row, created } = await this.facts.record(actor, body as B);
      return made(this.facts.view(row), row.version, created);
    }

    @ListRoute(view, { roles: EVERYONE, summary: `List ${family.all}`, description: 'Voided ones are listed too.' })
    async list(@CurrentActor() actor: Actor, @Query() query: FactsQuery): Promise<Page<V>> {
      return mapPage(await this.facts.list(actor, query), (row) => this.facts.view(row));
    }

    @ReadRoute(view, { roles: EVERYONE, summary: `Read ${one}` })
    async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<V>> {
      const row = await this.facts.find(actor, id);
      return tagged(this.facts.view(row), row.version);
    }

    @ActionRoute(view, { path: ':id/void', roles: EVERYONE, summary: `Void ${one}`, description: 'It stays to be seen and counts for nothing; take it down anew as it should be. Crew may void what they took down themselves.' })
    async void(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: ReasonBody): Promise<Reply<V>> {
      const row = await this.facts.void(actor, id, body.reason);
      return tagged(this.facts.view(row), row.version);
    }
  }
  // What the compiler would have written for a class of its own: the pipe and the reference find the body's class there.
  Reflect.defineMetadata('design:paramtypes', [Object, family.body], FactController.prototype, 'create');
  Object.defineProperty(FactController, 'name', { value: `${path.replace(/(^|-)(\w)/g, (_, __, letter: string) => letter.toUpperCase())}Controller` });
  return FactController;
}
