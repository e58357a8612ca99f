import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { at, make, makeTestPrices, simpleQuote, type TestPrices, usd, workedExample } from '../support/test-quote.js';

describe('acceptance of a quote', () => {
  let test: TestApp;
  let company: TestCompany;
  let prices: TestPrices;
  const issued = async (body: object): Promise<string> => {
    const id = await make(company.estimator, '/v1/quotes', body);
    expect((await company.estimator.post(`/v1/quotes/${id}/issue`)).status).toBe(200);
    return id;
  };
  const acceptance = { acceptedBy: 'Marta Ellingsworth', acceptedOn: '2027-04-20' };
  const simple = () => ({ ...simpleQuote(), validUntil: '2027-05-12' });

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    prices = await makeTestPrices(company);
  });
  afterAll(() => test.close());

  it('makes the job with the contract and the planned hours, and answers it again', async () => {
    const id = await issued({ ...workedExample(prices), validUntil: '2027-05-12' });
    const first = await company.estimator.post(`/v1/quotes/${id}/acceptance`, acceptance);
    const again = await company.estimator.post(`/v1/quotes/${id}/acceptance`, acceptance);
    expect([first.status, again.status, again.body]).toEqual([201, 200, first.body]);
    const job = await company.owner.get(`/v1/jobs/${first.body.jobId}`);
    expect(job.body).toMatchObject({ quoteId: id, quoteRevision: 1, state: 'planned', title: 'Renovation of the lower pond', siteId: prices.siteId, customerId: prices.customerId, contractTotal: usd('5613.11'), contractTax: usd('113.88') });
    expect(job.body.plannedHours).toEqual(expect.arrayContaining([{ costCode: 'cleanout', hours: '20.5' }, { costCode: 'edge', hours: '35.25' }]));
    expect((await company.owner.get(`/v1/quotes/${id}`)).body).toMatchObject({ state: 'accepted', ...acceptance });
    expect(await test.sql('SELECT cost_code, hours, cost, amount FROM job_plan WHERE job_id = $1 ORDER BY position', [first.body.jobId])).toMatchObject([
      { cost_code: 'cleanout', cost: '0.0000', amount: '1394.0000' },
      { cost_code: 'edge', cost: '0.0000', amount: '2397.0000' },
      { cost_code: 'filtration', hours: expect.stringMatching(/^0/) as string, cost: '785.1500', amount: '1041.3100' },
      { cost_code: 'liner', cost: '556.8000', amount: '780.8000' },
    ]);
  });

  it('refuses another acceptance of an accepted quote, and its revision and change', async () => {
    const id = await issued(simple());
    await company.estimator.post(`/v1/quotes/${id}/acceptance`, acceptance);
    for (const change of [{ acceptedBy: 'Otto Brandel' }, { acceptedOn: '2027-04-21' }]) {
      const other = await company.estimator.post(`/v1/quotes/${id}/acceptance`, { ...acceptance, ...change });
      expect([other.status, other.body.code]).toEqual([409, 'state-conflict']);
    }
    expect((await company.estimator.post(`/v1/quotes/${id}/revisions`)).status).toBe(409);
    expect((await company.estimator.patch(`/v1/quotes/${id}`, { title: 'Other' })).status).toBe(409);
    expect((await company.estimator.post(`/v1/quotes/${id}/issue`)).body.state).toBe('accepted');
  });

  it('accepts only what was issued, and never a superseded revision', async () => {
    const id = await make(company.estimator, '/v1/quotes', simple());
    expect((await company.estimator.post(`/v1/quotes/${id}/acceptance`, acceptance)).status).toBe(409);
    await company.estimator.post(`/v1/quotes/${id}/issue`);
    await company.estimator.post(`/v1/quotes/${id}/revisions`, { other: simpleQuote('300.00').other });
    const superseded = await company.estimator.post(`/v1/quotes/${id}/acceptance`, acceptance);
    expect([superseded.status, superseded.body.code]).toEqual([409, 'state-conflict']);
    await company.estimator.post(`/v1/quotes/${id}/issue`);
    const { body } = await company.estimator.post(`/v1/quotes/${id}/acceptance`, acceptance);
    expect((await company.owner.get(`/v1/jobs/${body.jobId}`)).body).toMatchObject({ quoteRevision: 2, contractTotal: usd('300.00') });
  });

  it('holds until the end of its last day at the site, not at the office or in UTC', async () => {
    const honolulu = await make(company.estimator, '/v1/sites', { customerId: prices.customerId, address: '1 Fern Road', timeZone: 'Pacific/Honolulu' });
    const featureId = await make(company.estimator, '/v1/features', { siteId: honolulu, kind: 'pond', name: 'Far pond' });
    const body = { ...simple(), featureId };
    const [inTime, late] = [await issued(body), await issued(body)];
    const accept = (id: string, moment: string) => at(test, company, moment, (estimator) => estimator.post(`/v1/quotes/${id}/acceptance`, { ...acceptance, acceptedOn: '2027-05-12' }));
    // Midnight ends May 12 in Honolulu at 10:00 UTC of May 13.
    expect((await accept(inTime, '2027-05-13T09:59:00Z')).status).toBe(201);
    const refused = await accept(late, '2027-05-13T10:00:00Z');
    expect([refused.status, refused.body.code]).toEqual([409, 'state-conflict']);
    expect(refused.body.detail).toContain('2027-05-12');
    // What was accepted in time stays so for a phone that repeats itself later.
    expect((await accept(inTime, '2027-06-01T00:00:00Z')).status).toBe(200);
  });

  it('refuses an acceptance dated after the last day', async () => {
    const id = await issued(simple());
    const { status, body } = await company.estimator.post(`/v1/quotes/${id}/acceptance`, { ...acceptance, acceptedOn: '2027-05-13' });
    expect([status, body.code, body.errors[0].pointer]).toEqual([409, 'state-conflict', '/acceptedOn']);
  });

  it('makes one job of many acceptances at once', async () => {
    const id = await issued(simple());
    const answers = await Promise.all(Array.from({ length: 6 }, () => company.estimator.post(`/v1/quotes/${id}/acceptance`, acceptance)));
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 200, 200, 200, 200, 201]);
    expect(new Set(answers.map(({ body }) => body.jobId as string)).size).toBe(1);
    expect(await test.sql('SELECT id FROM job WHERE quote_id = $1', [id])).toHaveLength(1);
  });

  it('lets one of two different acceptances at once win', async () => {
    const id = await issued(simple());
    const answers = await Promise.all(['Ada', 'Bea'].map((acceptedBy) => company.estimator.post(`/v1/quotes/${id}/acceptance`, { ...acceptance, acceptedBy })));
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 409]);
  });

  it.each([
    ['nobody', { acceptedBy: ' ' }, '/acceptedBy'],
    ['a day that is none', { acceptedOn: '2027-04-31' }, '/acceptedOn'],
    ['an unknown field', { signature: 'x' }, '/signature'],
  ])('refuses an acceptance by or with %s', async (_what, change, pointer) => {
    const id = await issued(simple());
    const { status, body } = await company.estimator.post(`/v1/quotes/${id}/acceptance`, { ...acceptance, ...change });
    expect([status, body.errors[0].pointer]).toEqual([400, pointer]);
  });
});
