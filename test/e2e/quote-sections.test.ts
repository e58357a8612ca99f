import { readPdf } from '../documents/read-pdf.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { make, makeTestPrices, simpleQuote, type TestPrices, usd } from '../support/test-quote.js';
import { sectionedQuote } from '../support/test-sections.js';

describe('sections of a quote', () => {
  let test: TestApp;
  let company: TestCompany;
  let prices: TestPrices;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    prices = await makeTestPrices(company);
  });
  afterAll(() => test.close());

  const refused = async (body: object) => {
    const { status, body: problem } = await company.estimator.post('/v1/quotes', body);
    return [status, problem.code, problem.errors.map(({ pointer }: { pointer: string }) => pointer)];
  };

  it('count in the totals unless they are optional, and each has totals of its own', async () => {
    const { body } = await company.estimator.post('/v1/quotes', sectionedQuote(prices)).expect(201);
    expect(body).toMatchObject({ netTotal: usd('2731.47'), taxTotal: usd('83.59'), grossTotal: usd('2815.06'), acceptedNetTotal: null, acceptedTaxes: null });
    expect(body.taxes).toEqual([{ category: 'materials', name: 'Sales tax', rate: '6.25', base: usd('1337.47'), tax: usd('83.59') }]);
    expect(body.sections).toEqual([
      { key: 'waterfall', title: 'Waterfall', phase: 2, optional: true, netTotal: usd('484.64'), taxTotal: usd('30.29'), grossTotal: usd('514.93'), taken: null },
      { key: 'circulation', title: 'Skimmer and circulation', phase: 1, optional: false, netTotal: usd('556.67'), taxTotal: usd('34.79'), grossTotal: usd('591.46'), taken: null },
      { key: 'liner', title: 'Liner', phase: 2, optional: false, netTotal: usd('780.80'), taxTotal: usd('48.80'), grossTotal: usd('829.60'), taken: null },
      { key: 'lights', title: 'Lights', phase: 1, optional: true, netTotal: usd('100.05'), taxTotal: usd('6.25'), grossTotal: usd('106.30'), taken: null },
    ]);
    expect(body.lines.map((line: { section: string | null }) => line.section)).toEqual([null, 'circulation', 'liner', 'waterfall', 'lights']);
  });

  it('leave a quote that has none as it was', async () => {
    const { body } = await company.estimator.post('/v1/quotes', { ...simpleQuote(), sections: [] }).expect(201);
    expect(body).toMatchObject({ netTotal: usd('250.00'), grossTotal: usd('250.00'), sections: [], lines: [{ section: null }] });
    expect(await test.sql("SELECT asked ? 'sections' AS kept FROM quote_revision WHERE quote_id = $1", [body.id])).toEqual([{ kept: false }]);
  });

  it('follow a patch and a new revision', async () => {
    const id = await make(company.estimator, '/v1/quotes', sectionedQuote(prices));
    const sections = sectionedQuote(prices).sections.map((section) => ({ ...section, optional: false }));
    const changed = await company.estimator.patch(`/v1/quotes/${id}`, { sections });
    expect([changed.status, changed.body.netTotal]).toEqual([200, usd('3316.16')]);
    const lost = await company.estimator.patch(`/v1/quotes/${id}`, { sections: sections.slice(1) });
    expect([lost.status, lost.body.errors[0].pointer]).toEqual([422, '/parts/2/section']);
    await company.estimator.post(`/v1/quotes/${id}/issue`).expect(200);
    const revised = await company.estimator.post(`/v1/quotes/${id}/revisions`, { sections: sectionedQuote(prices).sections });
    expect([revised.status, revised.body.revision, revised.body.netTotal]).toEqual([201, 2, usd('2731.47')]);
    const again = await company.estimator.post(`/v1/quotes/${id}/revisions`, { sections: sectionedQuote(prices).sections });
    expect([again.status, again.body]).toEqual([200, revised.body]);
    const before = await company.owner.get(`/v1/quotes/${id}/revisions/1`);
    expect(before.body).toMatchObject({ netTotal: usd('3316.16'), sections: [{ optional: false }, {}, {}, {}] });
  });

  it('are printed by phase, with options set apart and totals of phases and options', async () => {
    const id = await make(company.estimator, '/v1/quotes', sectionedQuote(prices));
    await company.estimator.post(`/v1/quotes/${id}/issue`).expect(200);
    const { text } = await readPdf((await company.owner.get(`/v1/quotes/${id}/document`).buffer(true)).body as Buffer);
    for (const words of ['Phase 1: Lights (optional)', 'Phase 1 $556.67', 'Phase 2 $780.80', 'Net total $2,731.47', 'Total $2,815.06', 'Option Waterfall: 484.64 and tax 30.29 $514.93', 'What you can choose', 'for a total of $2,815.06']) expect(text).toContain(words);
    const order = ['Included in any case', 'Phase 1: Skimmer', 'Phase 1: Lights', 'Phase 2: Liner', 'Phase 2: Waterfall'].map((words) => text.indexOf(words));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order).not.toContain(-1);
  });

  it('are not issued while one of them is empty', async () => {
    const quote = sectionedQuote(prices);
    const id = await make(company.estimator, '/v1/quotes', { ...quote, sections: [...quote.sections, { key: 'fish', title: 'Fish' }] });
    const { status, body } = await company.estimator.post(`/v1/quotes/${id}/issue`);
    expect([status, body.code]).toEqual([422, 'not-possible']);
    expect(body.detail).toContain('fish (Fish)');
  });

  it('are refused with the place of what is wrong', async () => {
    const quote = sectionedQuote(prices);
    const [first, second] = quote.sections;
    expect(await refused({ ...quote, sections: [first, second, { ...first, title: 'Again' }] })).toEqual([400, 'invalid-input', ['/sections/2/key']]);
    // The customer signs for titles: two that read alike could not be told apart on paper.
    expect(await refused({ ...quote, sections: [first, second, { key: 'third', title: 'Skimmer and Circulation' }] })).toEqual([400, 'invalid-input', ['/sections/2/title']]);
    expect(await refused({ ...quote, labor: [{ costCode: 'cleanout', section: 'koi' }], other: [{ ...quote.other[0], section: 'frogs' }] })).toEqual([422, 'not-possible', ['/labor/0/section', '/other/0/section']]);
    expect(await refused({ ...simpleQuote(), other: [{ ...simpleQuote().other[0], section: 'liner' }] })).toEqual([422, 'not-possible', ['/other/0/section']]);
  });

  it.each([
    ['a key that is no slug', { key: 'Water fall' }, '/sections/0/key'],
    ['a key that is a name of the language', { key: '__proto__' }, '/sections/0/key'],
    ['no title', { title: ' ' }, '/sections/0/title'],
    ['phase 0', { phase: 0 }, '/sections/0/phase'],
    ['half a phase', { phase: 1.5 }, '/sections/0/phase'],
    ['an option of a word', { optional: 'yes' }, '/sections/0/optional'],
    ['an unknown field', { discount: '5' }, '/sections/0/discount'],
  ])('are refused with %s', async (_what, change, pointer) => {
    expect(await refused({ ...simpleQuote(), sections: [{ key: 'liner', title: 'Liner', ...change }] })).toEqual([400, 'invalid-input', [pointer]]);
  });

  it('are at most fifty', async () => {
    const sections = Array.from({ length: 51 }, (_, index) => ({ key: `s${index}`, title: `Section ${index}` }));
    expect(await refused({ ...simpleQuote(), sections })).toEqual([400, 'invalid-input', ['/sections']]);
  });
});
