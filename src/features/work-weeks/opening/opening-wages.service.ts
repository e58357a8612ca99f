import { Injectable } from '@nestjs/common';
import { Decimal } from '../../../domain/decimal.js';
import type { Actor } from '../../../platform/auth/actor.js';
import { entityRows } from '../../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import type { Page } from '../../../platform/http/lists.js';
import { invalidInput } from '../../../platform/http/problems.js';
import { type Made, ResourceStore } from '../../../platform/resources/resource-store.js';
import { CompaniesService } from '../../companies/index.js';
import type { OpeningWagesBody, OpeningWagesQuery } from './opening-wages.dto.js';
import { OpeningWagesEntity } from './opening-wages.entity.js';
import { toOpeningWagesRow } from './opening-wages.mapper.js';

@Injectable()
export class OpeningWagesService {
  private readonly store: ResourceStore<OpeningWagesEntity>;

  constructor(
    private readonly db: TenantDatabase,
    private readonly companies: CompaniesService,
  ) {
    this.store = new ResourceStore(db, OpeningWagesEntity, 'opening wages');
  }

  /** @throws Problem 400 with the field, 409 when the person has some for the year */
  async create(actor: Actor, body: OpeningWagesBody): Promise<Made<OpeningWagesEntity>> {
    await this.requireAmounts(actor, body);
    return this.store.create(actor, body, toOpeningWagesRow(body));
  }

  find(actor: Actor, id: string): Promise<OpeningWagesEntity> {
    return this.store.find(actor, id);
  }

  list(actor: Actor, query: OpeningWagesQuery): Promise<Page<OpeningWagesEntity>> {
    return this.store.list(actor, query, { personId: query.personId });
  }

  /** @throws Problem as creating does, and 412 for a stale version */
  async update(actor: Actor, id: string, version: number, body: OpeningWagesBody): Promise<OpeningWagesEntity> {
    await this.requireAmounts(actor, body);
    return this.store.update(actor, id, version, toOpeningWagesRow(body));
  }

  /** Those of people for years; one statement. */
  ofYears(actor: Pick<Actor, 'companyId'>, personIds: readonly string[], from: number, until: number): Promise<OpeningWagesEntity[]> {
    return this.db.read(actor, (manager) => entityRows(manager, OpeningWagesEntity, 'WHERE company_id = $1 AND person_id = ANY ($2) AND year BETWEEN $3 AND $4', [actor.companyId, personIds, from, until]));
  }

  /** In another currency they could not be added up with wages. */
  private async requireAmounts(actor: Actor, { allPay, straightPay }: OpeningWagesBody): Promise<void> {
    const { currency } = await this.companies.current(actor);
    for (const [name, money] of Object.entries({ allPay, straightPay: straightPay ?? allPay })) {
      if (money.currency !== currency) throw invalidInput([{ pointer: `/${name}/currency`, detail: `must be ${currency}, the company's currency` }]);
    }
    if (new Decimal((straightPay ?? allPay).amount).gt(allPay.amount)) throw invalidInput([{ pointer: '/straightPay/amount', detail: 'must not be more than all pay; it is a part of it' }]);
  }
}
