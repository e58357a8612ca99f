import type { Client, TestCompany } from './test-company.js';
import { make, makeTestPrices, simpleQuote, workedExample } from './test-quote.js';

export interface AcceptedWork {
  readonly quoteId: string;
  readonly jobId: string;
}

/** A job through the whole way to it, of one untaxed line. Without a survey it names no customer. */
export function acceptSimpleWork({ estimator }: TestCompany, unitPrice: string): Promise<AcceptedWork> {
  return acceptQuote(estimator, simpleQuote(unitPrice));
}

/** A job of the worked example, once a company: 5,613.11 net, 113.88 tax on 1,822.11, 5,726.99 gross. */
export async function acceptWorkedExample(company: TestCompany): Promise<AcceptedWork> {
  return acceptQuote(company.estimator, workedExample(await makeTestPrices(company)));
}

export async function acceptQuote(estimator: Client, quote: object): Promise<AcceptedWork> {
  const quoteId = await make(estimator, '/v1/quotes', quote);
  const issued = await estimator.post(`/v1/quotes/${quoteId}/issue`).expect(200);
  const acceptance = { acceptedBy: 'Marta Ellingsworth', acceptedOn: issued.body.issuedOn as string };
  const { body } = await estimator.post(`/v1/quotes/${quoteId}/acceptance`, acceptance).expect(201);
  return { quoteId, jobId: body.jobId as string };
}
