import { v7 as uuidv7 } from 'uuid';
import { Decimal } from '../../src/domain/decimal.js';
import { JobsService } from '../../src/features/jobs/index.js';
import type { Actor } from '../../src/platform/auth/actor.js';
import type { TestApp } from './test-app.js';
import type { TestCompany } from './test-company.js';

/** The service itself, acting for a company. */
export function actorOf(company: Pick<TestCompany, 'id'>): Actor {
  return { companyId: company.id, personId: null, role: 'owner', sessionId: null };
}

let made = 0;

/**
 * A planned job whose quote is only a row: for tests of what happens to a job, not of how it was priced.
 * Plan: clean-out 20.5 h, edge 35.25 h, filtration none; contract 5,613.11 net, 113.88 tax; days in Detroit's zone.
 */
export async function makeTestJob(test: TestApp, company: Pick<TestCompany, 'id'>, changes: { title?: string; contractTotal?: string } = {}): Promise<string> {
  const quoteId = uuidv7();
  await test.sql('INSERT INTO quote (company_id, id, number) VALUES ($1, $2, $3)', [company.id, quoteId, `T-${++made}`]);
  const planned = (costCode: string, hours: string, cost: string, amount: string) => ({ costCode, hours: new Decimal(hours), cost: new Decimal(cost), amount: new Decimal(amount) });
  const { id } = await test.app.get(JobsService, { strict: false }).createFromQuote(actorOf(company), {
    quoteId,
    quoteRevision: 1,
    title: changes.title ?? 'Bring the mill pond back',
    customerId: null,
    siteId: null,
    featureId: null,
    timeZone: 'America/Detroit',
    currency: 'USD',
    contractTotal: new Decimal(changes.contractTotal ?? '5613.11'),
    contractTax: new Decimal('113.88'),
    plan: [planned('cleanout', '20.5', '0', '1394.00'), planned('edge', '35.25', '0', '2397.00'), planned('filtration', '0', '785.15', '1041.31'), planned('edge', '0', '556.80', '780.80')],
  });
  return id;
}
