import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { ListQuery, Page } from '../../platform/http/lists.js';
import { type Made, ResourceStore } from '../../platform/resources/resource-store.js';
import { CustomerEntity } from './customer.entity.js';
import { toCustomerRow } from './customer.mapper.js';
import type { CustomerBody } from './customers.dto.js';

@Injectable()
export class CustomersService {
  private readonly store: ResourceStore<CustomerEntity>;

  constructor(db: TenantDatabase) {
    this.store = new ResourceStore(db, CustomerEntity, 'customer');
  }

  create(actor: Actor, body: CustomerBody): Promise<Made<CustomerEntity>> {
    return this.store.create(actor, body, toCustomerRow(body));
  }

  find(actor: Actor, id: string): Promise<CustomerEntity> {
    return this.store.find(actor, id);
  }

  list(actor: Actor, query: ListQuery): Promise<Page<CustomerEntity>> {
    return this.store.list(actor, query);
  }

  update(actor: Actor, id: string, version: number, body: CustomerBody): Promise<CustomerEntity> {
    return this.store.update(actor, id, version, toCustomerRow(body));
  }
}
