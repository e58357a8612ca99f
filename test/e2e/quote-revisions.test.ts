import pg from 'pg';
import { Decimal, decimal } from '../../src/domain/decimal.js';
import { laborLine, partLine } from '../../src/domain/pricing/index.js';
import { convert, type Unit } from '../../src/domain/quantity/index.js';
import { readPdf } from '../documents/read-pdf.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { at, make, makeTestPrices, simpleQuote, SURVEY, type TestPrices, usd, workedExample } from '../support/test-quote.js';

interface StoredWorking { inputs: { name: string; value: string; unit?: string }[] }
interface StoredLine { kind: string; amount: { amount: string }; hours: string | null; working: StoredWorking }

describe('issue and revisions of a quote', () => {
  let test: TestApp;
  let company: TestCompany;
  let prices: TestPrices;
  const issued = async (body: object): Promise<string> => {
    const id = await make(company.estimator, '/v1/quotes', body);
    expect((await company.estimator.post(`/v1/quotes/${id}/issue`)).status).toBe(200);
    return id;
  };
  const bytesOf = async (path: string) => (await company.owner.get(path).buffer(true).parse((answer, done) => {
    const chunks: Buffer[] = [];
    answer.on('data', (chunk: Buffer) => chunks.push(chunk)).on('end', () => done(null, Buffer.concat(chunks)));
  })).body as Buffer;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    prices = await makeTestPrices(company);
  });
  afterAll(() => test.close());

  it('issues once: the day of the company, 30 days to accept, the same answer when repeated', async () => {
    const id = await make(company.estimator, '/v1/quotes', workedExample(prices));
    const first = await at(test, company, '2027-04-13T03:30:00Z', (estimator) => estimator.post(`/v1/quotes/${id}/issue`));
    expect([first.status, first.headers['etag']]).toEqual([200, '"2"']);
    expect(first.body).toMatchObject({ state: 'issued', issuedOn: '2027-04-12', validUntil: '2027-05-12', grossTotal: usd('5726.99') });
    const again = await company.estimator.post(`/v1/quotes/${id}/issue`);
    expect([again.status, again.headers['etag'], again.body]).toEqual([200, '"2"', first.body]);
  });

  it('prints the document once, and serves the same bytes after everything behind it changed', async () => {
    const own = await makeTestCompany(test);
    const ownPrices = await makeTestPrices(own);
    const id = await make(own.estimator, '/v1/quotes', { ...workedExample(ownPrices), validUntil: '2027-06-30' });
    const draft = await own.estimator.get(`/v1/quotes/${id}/document`);
    expect([draft.status, draft.body.code]).toEqual([409, 'state-conflict']);
    await own.estimator.post(`/v1/quotes/${id}/issue`);
    const read = async () => own.owner.get(`/v1/quotes/${id}/document`).responseType('blob');
    const before = await read();
    expect([before.status, before.headers['content-type']]).toEqual([200, 'application/pdf']);
    expect(before.headers['content-disposition']).toContain('Q-1001-1.pdf');
    await own.owner.patch('/v1/company', { name: 'Another Name', laborSellRate: '90.00' });
    await own.owner.patch(`/v1/customers/${ownPrices.customerId}`, { name: 'Somebody Else' });
    await own.owner.patch(`/v1/parts/${ownPrices.partIds[0]}`, { unitCost: usd('999.00') });
    await own.owner.patch(`/v1/labor-rules/${ownPrices.edgeRuleId}`, { hoursPerUnit: '9' });
    const after = await read();
    expect(Buffer.compare(after.body as Buffer, before.body as Buffer)).toBe(0);
    expect((await own.owner.get(`/v1/quotes/${id}/document`).set('if-none-match', before.headers['etag'] ?? '')).status).toBe(304);
    expect((await own.owner.get(`/v1/quotes/${id}`)).body.grossTotal).toEqual(usd('5726.99'));
    const { text } = await readPdf(before.body as Buffer);
    for (const word of ['Q-1001', 'Marta Ellingsworth', '4 Osier Court', 'Lower pond', 'Cleanout', '$5,726.99', 'June 30, 2027']) expect(text).toContain(word);
    expect(text).not.toContain('20.5');
  });

  it('prints a quote without a survey, which names no customer', async () => {
    const id = await issued(simpleQuote());
    const { text } = await readPdf(await bytesOf(`/v1/quotes/${id}/document`));
    expect(text).toContain('Take out the willow roots');
    expect(text).not.toContain('Prepared for');
  });

  it('refuses to issue an offer of nothing, or of less than nothing', async () => {
    const refused = async (body: object) => {
      const id = await make(company.estimator, '/v1/quotes', body);
      const answer = await company.estimator.post(`/v1/quotes/${id}/issue`);
      return [answer.status, answer.body.code];
    };
    expect(await refused({ title: 'Empty' })).toEqual([422, 'not-possible']);
    expect(await refused(simpleQuote('-1.00'))).toEqual([422, 'not-possible']);
  });

  it('does not change what was issued, and advises a new revision', async () => {
    const id = await issued(simpleQuote());
    const answer = await company.estimator.patch(`/v1/quotes/${id}`, { title: 'Other' });
    expect([answer.status, answer.body.code]).toEqual([409, 'state-conflict']);
    expect(answer.body.detail).toContain('new revision');
  });

  it('lets not even the service itself write an issued revision or its lines', async () => {
    const id = await issued(simpleQuote());
    const client = new pg.Client({ connectionString: test.database.serviceUrl });
    await client.connect();
    await client.query("SELECT set_config('rillbook.company', $1, false)", [company.id]);
    const lines = 'quote_line WHERE revision_id IN (SELECT id FROM quote_revision WHERE quote_id = $1)';
    const moved = '(SELECT id FROM quote_revision WHERE quote_id = $1)';
    const draftId = await make(company.estimator, '/v1/quotes', simpleQuote());
    const attempts: [string, string][] = [
      ["UPDATE quote_revision SET title = 'x' WHERE quote_id = $1", id],
      ['UPDATE quote_revision SET net_total = 1, gross_total = 1 + tax_total WHERE quote_id = $1', id],
      ["UPDATE quote_revision SET state = 'draft', issued_at = NULL, issued_on = NULL, document_sha256 = NULL WHERE quote_id = $1", id],
      ['UPDATE quote_revision SET valid_until = valid_until + 1 WHERE quote_id = $1', id],
      ["UPDATE quote_revision SET document_sha256 = sha256('x') WHERE quote_id = $1", id],
      ['DELETE FROM quote_revision WHERE quote_id = $1', id],
      [`UPDATE quote_line SET amount = 1 WHERE id IN (SELECT id FROM ${lines})`, id],
      [`DELETE FROM ${lines}`, id],
      [`UPDATE quote_line SET revision_id = ${moved}, position = 9 WHERE revision_id = (SELECT id FROM quote_revision WHERE quote_id = '${draftId}')`, id],
      [`INSERT INTO quote_line (company_id, id, revision_id, position, kind, cost_code, description, unit_price, amount, cost, working) SELECT company_id, uuidv7(), ${moved}, 7, 'other', 'x', 'x', 1, 1, 0, '{}' FROM quote WHERE id = $1`, id],
    ];
    for (const [sql, value] of attempts) {
      await expect(client.query(sql, [value]).then(() => sql)).rejects.toMatchObject({ code: '23001' });
    }
    await client.end();
    expect((await company.owner.get(`/v1/quotes/${id}`)).body).toMatchObject({ state: 'issued', netTotal: usd('250.00') });
  });

  it('re-computes an issued quote from its stored workings alone, to the same cents', async () => {
    const id = await issued(workedExample(prices));
    const { body } = await company.owner.get(`/v1/quotes/${id}`);
    const lines = body.lines as StoredLine[];
    expect(lines).toHaveLength(5);
    for (const { kind, amount, hours, working } of lines) {
      const input = (name: string): Decimal => new Decimal(working.inputs.find((one) => one.name === name)?.value ?? NaN);
      if (kind === 'part') {
        const line = partLine({ id: '', name: '', unitCost: input('unit cost'), markupPercent: input('markup'), packSize: input('pack size'), quantity: input('quantity wanted'), currency: 'USD' });
        expect(line.amount.toFixed(2)).toBe(amount.amount);
        continue;
      }
      const [quantity] = working.inputs;
      const unit = working.inputs.find(({ name }) => name === 'hours per unit')?.unit?.replace('h/', '') as Unit;
      const line = laborLine({
        quantity: { name: '', value: Number(quantity?.value), unit: quantity?.unit as Unit },
        rule: { id: '', name: '', costCode: '', unit, setupHours: input('setup hours'), hoursPerUnit: input('hours per unit'), minimumHours: input('minimum hours') },
        accessFactor: input('access factor'), hourIncrement: input('hour increment'), sellRate: input('sell rate'), currency: 'USD',
      });
      expect([line.amount.toFixed(2), line.hours.toFixed()]).toEqual([amount.amount, hours]);
      expect(convert(Number(quantity?.value), quantity?.unit as Unit, unit)).toBeGreaterThan(0);
    }
  });

  it('makes a new revision at the parts\' cost of today and the rules of the survey\'s date', async () => {
    const own = await makeTestCompany(test);
    const ownPrices = await makeTestPrices(own);
    const id = await make(own.estimator, '/v1/quotes', { ...workedExample(ownPrices), validUntil: '2099-01-01' });
    const tooEarly = await own.estimator.post(`/v1/quotes/${id}/revisions`, { title: 'Something else' });
    expect([tooEarly.status, tooEarly.body.code]).toEqual([409, 'state-conflict']);
    const old = (await own.estimator.post(`/v1/quotes/${id}/issue`)).body;
    await own.owner.patch(`/v1/parts/${ownPrices.partIds[1]}`, { unitCost: usd('0.90') });
    await make(own.estimator, '/v1/labor-rules', { costCode: 'edge', name: 'Edge, slower', quantity: 'perimeter', unit: 'ft', setupHours: '9', hoursPerUnit: '9', minimumHours: '9', effectiveFrom: '2027-03-03' });
    const body = { reason: 'Liner dealer raised the price', title: 'Renovation, second offer' };
    const revised = await own.estimator.post(`/v1/quotes/${id}/revisions`, body);
    expect([revised.status, revised.headers['etag']]).toEqual([201, '"3"']);
    expect(revised.body).toMatchObject({ number: old.number, revision: 2, state: 'draft', ...body, validUntil: '2099-01-01', issuedOn: null });
    // 0.90 + 40 % is 1.26 × 640 = 806.40, which is 25.60 more.
    expect(revised.body.netTotal).toEqual(usd('5638.71'));
    const again = await own.estimator.post(`/v1/quotes/${id}/revisions`, body);
    expect([again.status, again.body]).toEqual([200, revised.body]);
    expect((await own.estimator.post(`/v1/quotes/${id}/revisions`, { ...body, other: simpleQuote().other })).status).toBe(409);

    const first = await own.owner.get(`/v1/quotes/${id}/revisions/1`);
    expect(first.body).toEqual({ ...old, state: 'superseded', supersededByRevision: 2 });
    expect((await own.owner.get(`/v1/quotes/${id}`)).body).toEqual(revised.body);
    const list = await own.owner.get(`/v1/quotes/${id}/revisions`);
    expect(list.body.items.map(({ revision, state, reason }: Record<string, unknown>) => [revision, state, reason])).toEqual([[2, 'draft', 'Liner dealer raised the price'], [1, 'superseded', null]]);
    for (const revision of ['3', '0', 'x', '99999999999']) expect((await own.owner.get(`/v1/quotes/${id}/revisions/${revision}`)).status).toBe(404);
  });

  it('keeps the document of each revision', async () => {
    const id = await issued(simpleQuote());
    const first = await bytesOf(`/v1/quotes/${id}/document`);
    await company.estimator.post(`/v1/quotes/${id}/revisions`, { other: simpleQuote('300.00').other });
    const draft = await company.owner.get(`/v1/quotes/${id}/document`);
    expect([draft.status, draft.body.code]).toEqual([409, 'state-conflict']);
    await company.estimator.post(`/v1/quotes/${id}/issue`);
    expect((await readPdf(await bytesOf(`/v1/quotes/${id}/document`))).text).toContain('$300.00');
    expect(Buffer.compare(await bytesOf(`/v1/quotes/${id}/document?revision=1`), first)).toBe(0);
    expect((await company.owner.get(`/v1/quotes/${id}/document?revision=3`)).status).toBe(404);
    expect((await company.owner.get(`/v1/quotes/${id}/document?revision=-1`)).status).toBe(400);
  });

  it('takes away what a new revision does without, but stays at its feature', async () => {
    const id = await issued({ ...workedExample(prices), labor: [] });
    const featureId = await make(company.estimator, '/v1/features', { siteId: prices.siteId, kind: 'stream', name: 'The rill' });
    const elsewhere = await make(company.estimator, '/v1/surveys', { ...SURVEY, featureId });
    const moved = await company.estimator.post(`/v1/quotes/${id}/revisions`, { surveyId: elsewhere });
    expect([moved.status, moved.body.code, moved.body.errors[0].pointer]).toEqual([422, 'not-possible', '/surveyId']);
    const { status, body } = await company.estimator.post(`/v1/quotes/${id}/revisions`, { surveyId: null, featureId: prices.featureId, parts: [], other: simpleQuote().other });
    expect(status).toBe(201);
    expect(body).toMatchObject({ surveyId: null, featureId: prices.featureId, netTotal: usd('250.00') });
  });

  it('makes one revision of two requests at once', async () => {
    const id = await issued(simpleQuote());
    const answers = await Promise.all([1, 2, 3].map(() => company.estimator.post(`/v1/quotes/${id}/revisions`)));
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 200, 201]);
    expect(new Set(answers.map(({ body }) => body.revision as number))).toEqual(new Set([2]));
    expect(decimal((await test.sql<{ count: string }>('SELECT count(*) FROM quote_revision WHERE quote_id = $1', [id]))[0]?.count ?? 0).toNumber()).toBe(2);
  });
});
