import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { CLEANOUT, make, makeTestPrices, simpleQuote, SURVEY, type TestPrices, usd, workedExample } from '../support/test-quote.js';

describe('what a quote refuses', () => {
  let test: TestApp;
  let company: TestCompany;
  let prices: TestPrices;
  const post = (body: object) => company.estimator.post('/v1/quotes', { title: 'A pond', ...body });
  const refusal = async (body: object) => {
    const answer = await post(body);
    return [answer.status, answer.body.code, answer.body.errors?.[0]?.pointer];
  };

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    prices = await makeTestPrices(company);
  });
  afterAll(() => test.close());

  it('says what to do when no rule was in force for a cost code', async () => {
    const { status, body } = await post({ surveyId: prices.surveyId, labor: [{ costCode: 'edge' }, { costCode: 'planting' }] });
    expect([status, body.code, body.errors[0].pointer]).toEqual([422, 'not-possible', '/labor/1/costCode']);
    expect(body.errors[0].detail).toContain('in force on 2027-03-02; make one');
    const early = await make(company.estimator, '/v1/surveys', { ...SURVEY, featureId: prices.featureId, surveyedOn: '2026-12-31' });
    expect(await refusal({ surveyId: early, labor: [{ costCode: 'edge' }] })).toEqual([422, 'not-possible', '/labor/0/costCode']);
  });

  it('wants a survey for labor that goes by a takeoff, and readings for what goes by the sediment', async () => {
    expect(await refusal({ labor: [{ costCode: 'cleanout', ruleId: prices.cleanoutRuleId }] })).toEqual([422, 'not-possible', '/surveyId']);
    const bare = await make(company.estimator, '/v1/surveys', { featureId: prices.featureId, surveyedOn: '2027-03-02', outline: SURVEY.outline });
    expect(await refusal({ surveyId: bare, labor: [{ costCode: 'edge' }, { costCode: 'cleanout' }] })).toEqual([422, 'not-possible', '/labor/1']);
    expect((await post({ surveyId: bare, labor: [{ costCode: 'edge' }] })).status).toBe(201);
  });

  it('takes a number only for a rule that counts', async () => {
    expect(await refusal({ surveyId: prices.surveyId, labor: [{ costCode: 'edge', quantity: '3' }] })).toEqual([400, 'invalid-input', '/labor/0/quantity']);
  });

  it('refuses a named rule of another cost code', async () => {
    expect(await refusal({ surveyId: prices.surveyId, labor: [{ costCode: 'edge', ruleId: prices.cleanoutRuleId }] })).toEqual([422, 'not-possible', '/labor/0/ruleId']);
  });

  it('answers alike for what is not there and what another company has', async () => {
    const other = await makeTestCompany(test);
    const theirs = await makeTestPrices(other);
    for (const ids of [theirs, { surveyId: uuidv7(), featureId: uuidv7(), edgeRuleId: uuidv7(), partIds: [uuidv7()] }]) {
      expect(await refusal({ surveyId: ids.surveyId })).toEqual([422, 'no-such-reference', '/surveyId']);
      expect(await refusal({ featureId: ids.featureId })).toEqual([422, 'no-such-reference', '/featureId']);
      expect(await refusal({ surveyId: prices.surveyId, labor: [{ costCode: 'edge', ruleId: ids.edgeRuleId }] })).toEqual([422, 'no-such-reference', '/labor/0/ruleId']);
      const parts = [...workedExample(prices).parts, { partId: ids.partIds[0], quantity: '1', costCode: 'liner' }];
      expect(await refusal({ parts })).toEqual([422, 'no-such-reference', '/parts/3/partId']);
    }
  });

  it('refuses a feature that is not the survey\'s', async () => {
    const featureId = await make(company.estimator, '/v1/features', { siteId: prices.siteId, kind: 'stream', name: 'The rill' });
    expect(await refusal({ surveyId: prices.surveyId, featureId })).toEqual([422, 'not-possible', '/featureId']);
    expect((await post({ surveyId: prices.surveyId, featureId: prices.featureId })).status).toBe(201);
  });

  it('refuses a part that is no longer sold, or whose tax category is gone', async () => {
    const own = await makeTestCompany(test);
    const gone = await make(own.estimator, '/v1/parts', { sku: 'A', name: 'A', unit: 'each', unitCost: usd('1.00'), markupPercent: '0', taxCategory: 'materials' });
    const idle = await make(own.estimator, '/v1/parts', { sku: 'B', name: 'B', unit: 'each', unitCost: usd('1.00'), markupPercent: '0', active: false });
    await own.owner.patch('/v1/company', { taxCategories: [] });
    const refused = async (partId: string) => {
      const { status, body } = await own.estimator.post('/v1/quotes', { title: 'A', parts: [{ partId, quantity: '1', costCode: 'liner' }] });
      return [status, body.code, body.errors[0].pointer];
    };
    expect(await refused(gone)).toEqual([422, 'not-possible', '/parts/0/partId']);
    expect(await refused(idle)).toEqual([422, 'not-possible', '/parts/0/partId']);
  });

  it.each([
    ['another currency', { unitPrice: { amount: '5.00', currency: 'EUR' } }, '/other/0/unitPrice/currency'],
    ['a cost in another currency', { unitCost: { amount: '5.00', currency: 'CAD' } }, '/other/0/unitCost/currency'],
    ['a cost below zero', { unitCost: usd('-1.00') }, '/other/0/unitCost/amount'],
    ['an unknown tax category', { taxCategory: '__proto__' }, '/other/0/taxCategory'],
    ['a quantity as a number', { quantity: 1 }, '/other/0/quantity'],
    ['more than money can hold', { quantity: '1000000', unitPrice: usd('999999999999.00') }, '/other/0/quantity'],
    ['a line break in a description', { description: 'a\nb' }, '/other/0/description'],
    ['an unknown field', { price: '5.00' }, '/other/0/price'],
  ])('refuses %s in a line', async (_what, change, pointer) => {
    const [line] = simpleQuote().other;
    expect(await refusal({ other: [{ ...line, ...change }] })).toEqual([400, 'invalid-input', pointer]);
  });

  it.each([
    ['a part of nothing', { parts: [{ partId: uuidv7(), quantity: '0', costCode: 'liner' }] }, '/parts/0/quantity'],
    ['an id that is none', { surveyId: 'seven' }, '/surveyId'],
    ['a day that is none', { validUntil: '2027-02-29' }, '/validUntil'],
    ['lines that are no list', { labor: { costCode: 'edge' } }, '/labor'],
    ['a list of texts', { labor: ['edge'] }, '/labor/0'],
    ['too many labor lines', { labor: Array.from({ length: 101 }, () => ({ costCode: 'edge' })) }, '/labor'],
    ['too many other lines', { other: Array.from({ length: 501 }, () => simpleQuote().other[0]) }, '/other'],
    ['a blank title', { title: ' ' }, '/title'],
  ])('refuses %s', async (_what, body, pointer) => {
    expect(await refusal(body)).toEqual([400, 'invalid-input', pointer]);
  });

  it('refuses a total that money can not hold, though each line fits', async () => {
    const [line] = simpleQuote('999999999999.00').other;
    const { status, body } = await post({ other: [line, line] });
    expect([status, body.code]).toEqual([400, 'invalid-input']);
    expect(body.detail).toContain('total would be too large');
  });

  it('refuses hours beyond what can be stored or priced, never with a server error', async () => {
    await make(company.estimator, '/v1/labor-rules', { ...CLEANOUT, costCode: 'moving', quantity: 'count', unit: 'each', hoursPerUnit: '10000' });
    const ruleId = (await company.estimator.get('/v1/labor-rules?costCode=moving')).body.items[0].id as string;
    const { status, body } = await post({ labor: [{ costCode: 'moving', ruleId, quantity: '1000000' }] });
    expect([status, body.code]).toEqual([400, 'invalid-input']);
  });
});
