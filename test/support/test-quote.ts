import type { TestApp } from './test-app.js';
import { type Client, signIn, type TestCompany } from './test-company.js';
import { makeTestPond, type TestPond } from './test-pond.js';

export interface TestPrices extends TestPond {
  readonly surveyId: string;
  readonly cleanoutRuleId: string;
  readonly edgeRuleId: string;
  /** Skimmer, underlayment, pump. */
  readonly partIds: readonly [string, string, string];
}

export const usd = (amount: string) => ({ amount, currency: 'USD' });

export async function make(client: Client, path: string, body: object): Promise<string> {
  const answer = await client.post(path, body);
  if (answer.status !== 201) throw new Error(`POST ${path} failed: ${answer.text}`);
  return answer.body.id as string;
}

export const CLEANOUT = { costCode: 'cleanout', name: 'Drain and clean out', quantity: 'sedimentVolume', unit: 'yd3', setupHours: '3', hoursPerUnit: '1.75', minimumHours: '6', effectiveFrom: '2027-01-01' };
export const EDGE = { costCode: 'edge', name: 'Reset the edge stone', quantity: 'perimeter', unit: 'ft', setupHours: '2', hoursPerUnit: '0.45', minimumHours: '4', effectiveFrom: '2027-01-01' };
export const SURVEY = {
  surveyedOn: '2027-03-02',
  outline: { shape: 'ellipse', length: { value: 24, unit: 'ft' }, width: { value: 16, unit: 'ft' } },
  probes: { unit: 'in', readings: [[18, 27], [20, 30], [22, 30], [16, 25]].map(([toSediment, toBottom]) => ({ toSediment, toBottom })) },
  accessFactor: '1.15',
};

/** What the worked example of the price rules is priced from: pond, survey, two labor rules, three parts. */
export async function makeTestPrices(company: TestCompany): Promise<TestPrices> {
  const { estimator } = company;
  const pond = await makeTestPond(company);
  const part = (sku: string, unit: string, unitCost: string, markupPercent: string) =>
    make(estimator, '/v1/parts', { sku, name: `Part ${sku}`, unit, unitCost: usd(unitCost), markupPercent, taxCategory: 'materials' });
  return {
    ...pond,
    surveyId: await make(estimator, '/v1/surveys', { ...SURVEY, featureId: pond.featureId }),
    cleanoutRuleId: await make(estimator, '/v1/labor-rules', CLEANOUT),
    edgeRuleId: await make(estimator, '/v1/labor-rules', EDGE),
    partIds: [await part('SKIM-1', 'each', '412.35', '35'), await part('UL-8', 'ft2', '0.87', '40'), await part('PUMP-26', 'each', '186.40', '30')],
  };
}

/** The worked example: 5,613.11 net, 113.88 tax, 5,726.99 gross. */
export function workedExample({ surveyId, partIds: [skimmer, underlayment, pump] }: TestPrices) {
  return {
    surveyId,
    title: 'Renovation of the lower pond',
    labor: [{ costCode: 'cleanout' }, { costCode: 'edge' }],
    parts: [
      { partId: skimmer, quantity: '1', costCode: 'filtration' },
      { partId: underlayment, quantity: '640', costCode: 'liner' },
      { partId: pump, quantity: '2', costCode: 'filtration' },
    ],
  };
}

/** An offer of one line without a survey. */
export function simpleQuote(unitPrice = '250.00') {
  return { title: 'Willow roots', other: [{ description: 'Take out the willow roots', quantity: '1', unitPrice: usd(unitPrice), costCode: 'cleanout' }] };
}

/** Runs `work` with the service's clock set to that moment; the estimator signs in anew, since tokens go by it too. */
export async function at<T>(test: TestApp, company: TestCompany, moment: string, work: (estimator: Client) => Promise<T>): Promise<T> {
  const { body } = await company.owner.get(`/v1/people/${company.estimator.personId}`);
  test.setClock(moment);
  try {
    return await work(await signIn(test, body.email as string));
  } finally {
    test.setClock(null);
  }
}
