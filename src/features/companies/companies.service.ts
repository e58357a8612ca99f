import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { Decimal } from '../../domain/decimal.js';
import type { TaxCategory } from '../../domain/money/index.js';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { invalidInput, notFound, staleVersion, stateConflict } from '../../platform/http/problems.js';
import type { CompanyBody } from './companies.dto.js';
import { CompanyEntity } from './company.entity.js';
import { toCompanyRow } from './company.mapper.js';

/** The company that the actor works for. */
@Injectable()
export class CompaniesService {
  constructor(private readonly db: TenantDatabase) {}

  async current(actor: Pick<Actor, 'companyId'>): Promise<CompanyEntity> {
    const row = await this.db.read(actor, (manager) => manager.findOne(CompanyEntity, { where: { companyId: actor.companyId } }));
    if (row === null) throw notFound('company');
    return row;
  }

  /** Whether this database serves any company at all; row-level security would hide the others. */
  async anyThere(actor: Pick<Actor, 'companyId'>): Promise<boolean> {
    const [row] = await this.db.read(actor, (manager) => manager.query<{ there: boolean }[]>('SELECT any_company() AS there'));
    return row?.there === true;
  }

  /** Makes a company; only the command line and the demonstration do. */
  async create(body: CompanyBody, id: string = uuidv7()): Promise<Actor> {
    requireCategories(body);
    const actor: Actor = { companyId: id, personId: null, role: 'owner', sessionId: null };
    await this.db.write(actor, (manager) => manager.insert(CompanyEntity, { companyId: id, ...toCompanyRow(body) }));
    return actor;
  }

  /** @throws Problem 412 when it was changed since, 409 when money of the old currency is there */
  async update(actor: Actor, version: number, body: CompanyBody): Promise<CompanyEntity> {
    requireCategories(body);
    return this.db.write(actor, async (manager) => {
      const before = await this.current(actor);
      if (before.currency !== body.currency && (await this.hasMoney(actor))) {
        throw stateConflict('The currency can not change any more: there are parts or quotes in it.', [{ pointer: '/currency', detail: `must stay ${before.currency}` }]);
      }
      const result = await manager
        .createQueryBuilder()
        .update(CompanyEntity)
        .set({ ...toCompanyRow(body), version: () => 'version + 1' })
        .where('company_id = :companyId AND version = :version', { companyId: actor.companyId, version })
        .execute();
      if (result.affected !== 1) throw staleVersion('company', before.version);
      return this.current(actor);
    });
  }

  private async hasMoney(actor: Actor): Promise<boolean> {
    const [row] = await this.db.read(actor, (manager) =>
      manager.query<{ there: boolean }[]>('SELECT EXISTS (SELECT FROM part WHERE company_id = $1) OR EXISTS (SELECT FROM quote WHERE company_id = $1) AS there', [actor.companyId]),
    );
    return row?.there === true;
  }
}

/** The tax categories as the pricing core takes them. */
export function taxCategoriesOf(company: CompanyEntity): TaxCategory[] {
  return company.taxCategories.map(({ code, name, rate }) => ({ code, name, rate: new Decimal(rate) }));
}

/** @throws Problem 400 when a line names a category that the company does not have */
export function requireTaxCategory(company: CompanyEntity, code: string | null | undefined, pointer: string): void {
  if (code === null || code === undefined || company.taxCategories.some((category) => category.code === code)) return;
  const codes = company.taxCategories.map((category) => category.code).join(', ') || 'none so far';
  throw invalidInput([{ pointer, detail: `must be a tax category of the company: ${codes}` }]);
}

function requireCategories(body: CompanyBody): void {
  const codes = body.taxCategories.map((category) => category.code);
  const twice = codes.findIndex((code, index) => codes.indexOf(code) < index);
  if (twice >= 0) throw invalidInput([{ pointer: `/taxCategories/${twice}/code`, detail: 'is there twice; give each category its own code' }]);
  if (body.laborTaxCategory && !codes.includes(body.laborTaxCategory)) {
    throw invalidInput([{ pointer: '/laborTaxCategory', detail: `must be the code of one of the tax categories: ${codes.join(', ') || 'there are none'}` }]);
  }
}
