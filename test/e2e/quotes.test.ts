import { v7 as uuidv7 } from 'uuid';
import { decimal } from '../../src/domain/decimal.js';
import { statementsDuring } from '../support/count-statements.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { at, CLEANOUT, EDGE, make, makeTestPrices, simpleQuote, SURVEY, type TestPrices, usd, workedExample } from '../support/test-quote.js';

interface Line { kind: string; hours: string | null; quantity: string; unit: string; unitPrice: object; amount: { amount: string }; taxCategory: string | null; ruleId: string | null; working: Working }
interface Working { inputs: { name: string; value: string; source?: string }[]; takeoff?: { rule: string } }

describe('quotes', () => {
  let test: TestApp;
  let company: TestCompany;
  let prices: TestPrices;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    prices = await makeTestPrices(company);
  });
  afterAll(() => test.close());

  it('prices the worked example to the cent', async () => {
    const { status, body } = await company.estimator.post('/v1/quotes', workedExample(prices));
    expect(status).toBe(201);
    expect(body).toMatchObject({ number: 'Q-1001', revision: 1, state: 'draft', rulesAsOf: '2027-03-02', validUntil: null, issuedOn: null, supersededByRevision: null });
    expect(body).toMatchObject({ surveyId: prices.surveyId, featureId: prices.featureId, siteId: prices.siteId, customerId: prices.customerId });
    const lines = body.lines as Line[];
    expect(lines.map(({ kind, hours, unitPrice, amount, taxCategory }) => [kind, hours, unitPrice, amount, taxCategory])).toEqual([
      ['labor', '20.5', usd('68.00'), usd('1394.00'), null],
      ['labor', '35.25', usd('68.00'), usd('2397.00'), null],
      ['part', null, usd('556.67'), usd('556.67'), 'materials'],
      ['part', null, usd('1.22'), usd('780.80'), 'materials'],
      ['part', null, usd('242.32'), usd('484.64'), 'materials'],
    ]);
    expect(lines.map(({ quantity, unit }) => [Number(quantity).toFixed(4), unit])).toEqual([['8.3776', 'yd3'], ['63.4618', 'ft'], ['1.0000', 'each'], ['640.0000', 'ft2'], ['2.0000', 'each']]);
    expect(body.taxes).toEqual([{ category: 'materials', name: 'Sales tax', rate: '6.25', base: usd('1822.11'), tax: usd('113.88') }]);
    expect([body.netTotal, body.taxTotal, body.grossTotal]).toEqual([usd('5613.11'), usd('113.88'), usd('5726.99')]);
    expect((await company.owner.get(`/v1/quotes/${body.id}`)).body).toEqual(body);
  });

  it('shows in each line how it was priced, with the version of its rule or part', async () => {
    const { body } = await company.estimator.post('/v1/quotes', workedExample(prices));
    const [cleanout, , skimmer] = body.lines as [Line, Line, Line];
    expect(cleanout.working.inputs.find(({ name }) => name === 'hours per unit')?.source).toContain(`${prices.cleanoutRuleId} version 1`);
    expect(cleanout.working.inputs[0]?.source).toContain(`${prices.surveyId} version 1`);
    expect(cleanout.working.takeoff?.rule).toContain('surface area × mean thickness');
    expect(skimmer.working.inputs[0]?.source).toContain(`${prices.partIds[0]} version 1`);
    expect(skimmer.working.takeoff).toBeUndefined();
  });

  it('answers the same create with the first result, also after the prices changed', async () => {
    const body = { id: uuidv7(), ...simpleQuote() };
    const first = await company.estimator.post('/v1/quotes', body);
    const again = await company.estimator.post('/v1/quotes', body);
    const other = await company.estimator.post('/v1/quotes', { ...body, title: 'Something else' });
    expect([first.status, again.status, other.status, other.body.code]).toEqual([201, 200, 409, 'id-taken']);
    expect(again.body).toEqual(first.body);
  });

  it('prices by the rules of the survey\'s date, and of two by the one made last', async () => {
    const own = await makeTestCompany(test);
    const { featureId, surveyId } = await makeTestPrices(own);
    const later = await make(own.estimator, '/v1/labor-rules', { ...CLEANOUT, hoursPerUnit: '2', effectiveFrom: '2027-03-03' });
    const laterStill = await make(own.estimator, '/v1/labor-rules', { ...CLEANOUT, hoursPerUnit: '3', effectiveFrom: '2027-03-03' });
    const newSurvey = await make(own.estimator, '/v1/surveys', { ...SURVEY, featureId, surveyedOn: '2027-03-03' });
    const price = async (survey: string, labor: object): Promise<Line> => (await own.estimator.post('/v1/quotes', { title: 'Clean-out', surveyId: survey, labor: [labor] })).body.lines[0] as Line;
    expect((await price(surveyId, { costCode: 'cleanout' })).hours).toBe('20.5');
    expect((await price(newSurvey, { costCode: 'cleanout' })).ruleId).toBe(laterStill);
    expect((await price(surveyId, { costCode: 'cleanout', ruleId: later })).ruleId).toBe(later);
  });

  it('prices labor by count without a survey, with the rules of the day the quote is made', async () => {
    await make(company.estimator, '/v1/labor-rules', { ...EDGE, costCode: 'lighting', quantity: 'count', unit: 'each', setupHours: '1', hoursPerUnit: '0.5', minimumHours: '0', effectiveFrom: '2027-02-01' });
    const labor = [{ costCode: 'lighting', quantity: '5', description: 'Set five lights' }, { costCode: 'lighting' }];
    const { body } = await at(test, company, '2027-03-10T02:00:00Z', (estimator) => estimator.post('/v1/quotes', { title: 'Lights', featureId: prices.featureId, labor }));
    expect(body).toMatchObject({ rulesAsOf: '2027-03-09', surveyId: null, customerId: prices.customerId });
    expect(body.lines).toMatchObject([
      { hours: '3.5', quantity: '5', unit: 'each', amount: usd('238.00'), description: 'Set five lights' },
      { hours: '1.5', quantity: '1', amount: usd('102.00'), description: 'Reset the edge stone' },
    ]);
  });

  it('rounds parts up to whole packs, and takes discounts and half cents the right way', async () => {
    const partId = await make(company.estimator, '/v1/parts', { sku: 'SEAL', name: 'Sealant', unit: 'each', unitCost: usd('1.25'), markupPercent: '10', packSize: '12' });
    const other = [{ description: 'Off season', quantity: '1.5', unitPrice: usd('-0.03'), taxCategory: 'materials', costCode: 'edge' }];
    const { body } = await company.estimator.post('/v1/quotes', { title: 'Seal', parts: [{ partId: partId.toUpperCase(), quantity: '13', costCode: 'edge' }], other });
    expect(body.lines).toMatchObject([
      { quantity: '24', unitPrice: usd('1.38'), amount: usd('33.12'), cost: usd('30.00'), taxCategory: null },
      { quantity: '1.5', unit: null, amount: usd('-0.05'), unitCost: usd('0.00') },
    ]);
    expect(body.taxes).toEqual([{ category: 'materials', name: 'Sales tax', rate: '6.25', base: usd('-0.05'), tax: usd('0.00') }]);
    expect(body.grossTotal).toEqual(usd('33.07'));
  });

  it('taxes labor when the company says so', async () => {
    const own = await makeTestCompany(test, { taxCategories: [{ code: 'work', name: 'Tax on work', rate: '5' }, { code: 'materials', name: 'Sales tax', rate: '6.25' }], laborTaxCategory: 'work' });
    const { body } = await own.estimator.post('/v1/quotes', workedExample(await makeTestPrices(own)));
    expect(body.taxes).toMatchObject([{ category: 'work', base: usd('3791.00'), tax: usd('189.55') }, { category: 'materials', tax: usd('113.88') }]);
    expect(body.grossTotal).toEqual(usd('5916.54'));
  });

  it('prices a draft anew when it is changed, parts at their cost of today', async () => {
    const partId = await make(company.estimator, '/v1/parts', { sku: 'VALVE', name: 'Ball valve', unit: 'each', unitCost: usd('10.00'), markupPercent: '50' });
    const { body } = await company.estimator.post('/v1/quotes', { title: 'Valves', parts: [{ partId, quantity: '2', costCode: 'plumbing' }] });
    await company.owner.patch(`/v1/parts/${partId}`, { unitCost: usd('12.00') });
    expect((await company.estimator.get(`/v1/quotes/${body.id}`)).body.netTotal).toEqual(usd('30.00'));
    const changed = await company.estimator.patch(`/v1/quotes/${body.id}`, { title: 'Two valves', validUntil: '2027-06-01' });
    expect([changed.status, changed.headers['etag']]).toEqual([200, '"2"']);
    expect(changed.body).toMatchObject({ title: 'Two valves', validUntil: '2027-06-01', netTotal: usd('36.00'), rulesAsOf: body.rulesAsOf });
    const emptied = await company.estimator.patch(`/v1/quotes/${body.id}`, { parts: [], validUntil: null });
    expect(emptied.body).toMatchObject({ lines: [], netTotal: usd('0.00'), taxes: [], validUntil: null });
    const surveyed = await company.estimator.patch(`/v1/quotes/${body.id}`, { surveyId: prices.surveyId, labor: [{ costCode: 'edge' }] });
    expect(surveyed.body).toMatchObject({ netTotal: usd('2397.00'), siteId: prices.siteId, rulesAsOf: '2027-03-02' });
    expect((await company.estimator.patch(`/v1/quotes/${body.id}`, { title: 'Late' }, '"1"')).status).toBe(412);
  });

  it('lists quotes by customer and state in one statement, however many there are', async () => {
    const own = await makeTestCompany(test);
    const { featureId, customerId } = await makeTestPrices(own);
    const made: string[] = [];
    for (let i = 0; i < 5; i++) made.push(await make(own.estimator, '/v1/quotes', { ...simpleQuote(), featureId }));
    await own.estimator.post(`/v1/quotes/${made[0]}/issue`);
    const stray = await make(own.estimator, '/v1/quotes', simpleQuote());
    const idsOf = async (query: string) => ((await own.owner.get(`/v1/quotes${query}`)).body.items as { id: string }[]).map(({ id }) => id);
    expect(await idsOf('')).toEqual([stray, ...made.toReversed()]);
    expect(await idsOf(`?customerId=${customerId}`)).toEqual(made.toReversed());
    expect(await idsOf('?state=issued')).toEqual([made[0]]);
    const [item] = (await own.owner.get('/v1/quotes?limit=1')).body.items as object[];
    expect(item).not.toHaveProperty('lines');
    expect(item).toMatchObject({ id: stray, number: 'Q-1006', state: 'draft', netTotal: usd('250.00') });
    const ofQuotes = async (path: string) => (await statementsDuring(test, () => own.owner.get(path))).filter((sql) => sql.includes('quote'));
    expect(await ofQuotes('/v1/quotes?limit=1')).toHaveLength(1);
    expect(await ofQuotes('/v1/quotes?limit=6')).toHaveLength(1);
  });

  it('prices many lines with as many statements as few', async () => {
    const [skimmer] = prices.partIds;
    const quote = (count: number) => ({ ...workedExample(prices), labor: Array.from({ length: count }, () => ({ costCode: 'edge' })), parts: Array.from({ length: count }, () => ({ partId: skimmer, quantity: '1', costCode: 'edge' })) });
    await company.estimator.get('/v1/quotes?limit=1'); // the connection and the session are known from here on
    const few = await statementsDuring(test, () => company.estimator.post('/v1/quotes', quote(1)));
    const many = await statementsDuring(test, () => company.estimator.post('/v1/quotes', quote(100)));
    expect(many).toHaveLength(few.length);
  });

  it('is closed to the crew, and to other companies', async () => {
    const id = await make(company.estimator, '/v1/quotes', simpleQuote());
    const other = await makeTestCompany(test);
    for (const path of ['', '/document', '/revisions', '/revisions/1']) {
      expect((await other.owner.get(`/v1/quotes/${id}${path}`)).status).toBe(404);
      for (const person of [company.crewLead, company.crew]) expect((await person.get(`/v1/quotes/${id}${path}`)).status).toBe(403);
    }
    for (const [path, body] of [['issue', {}], ['revisions', {}], ['acceptance', { acceptedBy: 'A', acceptedOn: '2027-03-01' }]] as const) {
      expect((await other.owner.post(`/v1/quotes/${id}/${path}`, body)).status).toBe(404);
      expect((await company.crewLead.post(`/v1/quotes/${id}/${path}`, body)).status).toBe(403);
    }
    expect((await company.crew.get('/v1/quotes')).status).toBe(403);
    expect((await company.crew.post('/v1/quotes', simpleQuote())).status).toBe(403);
    expect((await other.owner.get('/v1/quotes')).body.items).toEqual([]);
  });

  it('gives the same totals whatever the order of the lines', async () => {
    const quote = workedExample(prices);
    const forward = await company.estimator.post('/v1/quotes', quote);
    const backward = await company.estimator.post('/v1/quotes', { ...quote, labor: quote.labor.toReversed(), parts: quote.parts.toReversed() });
    expect(backward.body.grossTotal).toEqual(forward.body.grossTotal);
    const sum = (backward.body.lines as Line[]).reduce((total, line) => total.plus(line.amount.amount), decimal(0));
    expect(sum.toFixed(2)).toBe(backward.body.netTotal.amount);
  });
});
