import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { ListQuery, mapPage, type Page } from '../../platform/http/lists.js';
import { patched } from '../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { toCustomerBody, toCustomerView } from './customer.mapper.js';
import { CustomerBody, CustomerView } from './customers.dto.js';
import { CustomersService } from './customers.service.js';

@Controller('v1/customers')
export class CustomersController {
  constructor(private readonly customers: CustomersService) {}

  @CreateRoute(CustomerView, { roles: OFFICE, summary: 'Enter a customer' })
  async create(@CurrentActor() actor: Actor, @Body() body: CustomerBody): Promise<Reply<CustomerView>> {
    const { row, created } = await this.customers.create(actor, body);
    return made(toCustomerView(row), row.version, created);
  }

  @ListRoute(CustomerView, { roles: EVERYONE, summary: 'List the customers' })
  async list(@CurrentActor() actor: Actor, @Query() query: ListQuery): Promise<Page<CustomerView>> {
    return mapPage(await this.customers.list(actor, query), toCustomerView);
  }

  @ReadRoute(CustomerView, { roles: EVERYONE, summary: 'Read a customer' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<CustomerView>> {
    const row = await this.customers.find(actor, id);
    return tagged(toCustomerView(row), row.version);
  }

  @ChangeRoute(CustomerBody, CustomerView, { roles: OFFICE, summary: 'Change a customer' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<CustomerView>> {
    const current = await this.customers.find(actor, id);
    const row = await this.customers.update(actor, id, version, await patched(CustomerBody, toCustomerBody(current), patch));
    return tagged(toCustomerView(row), row.version);
  }
}
