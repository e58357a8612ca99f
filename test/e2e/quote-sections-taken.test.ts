import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { make, makeTestPrices, simpleQuote, type TestPrices, usd } from '../support/test-quote.js';
import { sectionedQuote } from '../support/test-sections.js';

const ACCEPTANCE = { acceptedBy: 'Marta Ellingsworth', acceptedOn: '2027-04-20' };

describe('the sections that a customer takes', () => {
  let test: TestApp;
  let company: TestCompany;
  let prices: TestPrices;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    prices = await makeTestPrices(company);
  });
  afterAll(() => test.close());

  const issued = async (body: object = sectionedQuote(prices), of = company): Promise<string> => {
    const id = await make(of.estimator, '/v1/quotes', body);
    await of.estimator.post(`/v1/quotes/${id}/issue`).expect(200);
    return id;
  };
  const accept = (id: string, sections?: unknown, of = company) => of.estimator.post(`/v1/quotes/${id}/acceptance`, { ...ACCEPTANCE, ...(sections === undefined ? {} : { sections }) });
  const refusal = async (id: string, sections: unknown) => {
    const { status, body } = await accept(id, sections);
    return [status, body.errors.map(({ pointer }: { pointer: string }) => pointer)];
  };

  it('are those of phase 1 and an option: job, invoice and profitability follow them to the cent', async () => {
    const id = await issued();
    const before = (await company.owner.get(`/v1/quotes/${id}`)).body;
    const printed = (await company.owner.get(`/v1/quotes/${id}/document`).buffer(true)).body as Buffer;
    const { jobId } = (await accept(id, ['lights', 'circulation']).expect(201)).body;

    const quote = (await company.owner.get(`/v1/quotes/${id}`)).body;
    // 34.79 and 6.25 apart, but 41.05 on 656.72 together.
    const contract = { acceptedNetTotal: usd('2050.72'), acceptedTaxTotal: usd('41.05'), acceptedGrossTotal: usd('2091.77') };
    const taxes = [{ category: 'materials', name: 'Sales tax', rate: '6.25', base: usd('656.72'), tax: usd('41.05') }];
    expect(quote).toMatchObject({ state: 'accepted', ...contract, acceptedTaxes: taxes });
    for (const kept of ['netTotal', 'taxTotal', 'grossTotal', 'taxes', 'lines']) expect(quote[kept]).toEqual(before[kept]);
    expect(quote.sections.map(({ key, taken }: { key: string; taken: boolean }) => [key, taken])).toEqual([['waterfall', false], ['circulation', true], ['liner', false], ['lights', true]]);
    expect((await company.owner.get(`/v1/quotes/${id}/document`).buffer(true)).body).toEqual(printed);
    const { items } = (await company.owner.get('/v1/quotes?state=accepted')).body;
    expect(items.find((item: { id: string }) => item.id === id)).toMatchObject({ netTotal: usd('2731.47'), ...contract });

    const job = (await company.owner.get(`/v1/jobs/${jobId}`)).body;
    expect(job).toMatchObject({ contractTotal: usd('2050.72'), contractTax: usd('41.05'), plannedHours: [{ costCode: 'cleanout', hours: '20.5' }] });
    expect(await test.sql('SELECT cost_code, cost, amount FROM job_plan WHERE job_id = $1 ORDER BY position', [jobId])).toEqual([
      { cost_code: 'cleanout', cost: '0.0000', amount: '1394.0000' },
      { cost_code: 'filtration', cost: '412.3500', amount: '556.6700' },
      { cost_code: 'lighting', cost: '60.0000', amount: '100.0500' },
    ]);

    const invoice = (await company.owner.post('/v1/invoices', { jobId, basis: 'final' }).expect(201)).body;
    expect(invoice).toMatchObject({ netTotal: usd('2050.72'), taxes, grossTotal: usd('2091.77'), balanceDue: usd('2091.77') });
    expect(invoice.lines.map((line: { amount: object }) => line.amount)).toEqual([usd('1394.00'), usd('556.67'), usd('100.05')]);
    await company.owner.post(`/v1/invoices/${invoice.id}/issue`).expect(200);
    expect((await company.owner.get(`/v1/jobs/${jobId}/profitability`)).body).toMatchObject({ contractTotal: usd('2050.72'), invoicedTotal: usd('2050.72'), margin: usd('2050.72') });
  });

  it('are all but the optional ones when nothing is said', async () => {
    const id = await issued();
    const { jobId } = (await accept(id).expect(201)).body;
    expect((await company.owner.get(`/v1/jobs/${jobId}`)).body).toMatchObject({ contractTotal: usd('2731.47'), contractTax: usd('83.59') });
    const quote = (await company.owner.get(`/v1/quotes/${id}`)).body;
    expect(quote).toMatchObject({ acceptedGrossTotal: quote.grossTotal, acceptedTaxes: quote.taxes });
    // Saying what was meant is the same acceptance, in any order; another choice is not.
    expect((await accept(id, ['liner', 'circulation'])).status).toBe(200);
    expect((await accept(id, null)).body).toEqual({ jobId });
    const other = await accept(id, ['circulation', 'liner', 'lights']);
    expect([other.status, other.body.code]).toEqual([409, 'state-conflict']);
    expect(other.body.detail).toContain('circulation, liner');
  });

  it('are everything in a quote without sections', async () => {
    const id = await issued({ ...simpleQuote(), validUntil: '2027-05-12' });
    expect(await refusal(id, ['liner'])).toEqual([422, ['/sections/0']]);
    expect((await accept(id, [])).status).toBe(201);
    expect((await accept(id)).status).toBe(200);
    expect((await company.owner.get(`/v1/quotes/${id}`)).body).toMatchObject({ acceptedNetTotal: usd('250.00'), acceptedTaxTotal: usd('0.00'), acceptedTaxes: [], sections: [] });
  });

  it('must be sections of the quote, each named once, with those of phase 1', async () => {
    const id = await issued();
    expect(await refusal(id, ['circulation', 'koi'])).toEqual([422, ['/sections/1']]);
    expect(await refusal(id, ['circulation', 'circulation'])).toEqual([422, ['/sections/1']]);
    expect(await refusal(id, ['liner'])).toEqual([422, ['/sections']]);
    expect(await refusal(id, [])).toEqual([422, ['/sections']]);
    expect(await refusal(id, 'circulation')).toEqual([400, ['/sections']]);
    expect(await refusal(id, [7])).toEqual([400, ['/sections/0']]);
    expect((await company.owner.get(`/v1/quotes/${id}`)).body.state).toBe('issued');
  });

  it('must hold something, and come to no less than nothing', async () => {
    const priced = (unitPrice: string, section: string) => ({ ...simpleQuote(unitPrice).other[0], section });
    const quote = {
      title: 'Only options', validUntil: '2027-05-12',
      sections: [{ key: 'work', title: 'Work', optional: true }, { key: 'spring', title: 'Spring discount', optional: true }],
      other: [priced('80.00', 'work'), priced('-90.00', 'spring')],
    };
    const id = await issued(quote);
    expect(await refusal(id, undefined)).toEqual([422, ['/sections']]);
    expect(await refusal(id, ['work', 'spring'])).toEqual([422, ['/sections']]);
    const { jobId } = (await accept(id, ['work']).expect(201)).body;
    expect((await company.owner.get(`/v1/jobs/${jobId}`)).body.contractTotal).toEqual(usd('80.00'));
  });

  it('are taxed at the rates of the quote, also where only an option has the category', async () => {
    const own = await makeTestCompany(test, { taxCategories: [{ code: 'materials', name: 'Sales tax', rate: '6.25' }, { code: 'plants', name: 'Plant levy', rate: '2' }] });
    const other = (amount: string, taxCategory: string, section: string) => ({ description: `For ${section}`, quantity: '1', unitPrice: usd(amount), taxCategory, costCode: 'planting', section });
    const id = await issued({
      title: 'Plants', validUntil: '2027-05-12',
      sections: [{ key: 'edge', title: 'Edge' }, { key: 'lilies', title: 'Lilies', optional: true }],
      other: [other('100.00', 'materials', 'edge'), other('50.00', 'plants', 'lilies')],
    }, own);
    expect((await own.owner.patch('/v1/company', { taxCategories: [{ code: 'materials', name: 'Sales tax', rate: '9' }] })).status).toBe(200);
    await accept(id, ['edge', 'lilies'], own).expect(201);
    expect((await own.owner.get(`/v1/quotes/${id}`)).body).toMatchObject({ acceptedNetTotal: usd('150.00'), acceptedTaxes: [{ category: 'materials', rate: '6.25', tax: usd('6.25') }, { category: 'plants', rate: '2', tax: usd('1.00') }] });
  });

  it('do not change any more, not even by SQL, and nothing is taken before the acceptance', async () => {
    const id = await issued();
    await expect(test.sql(`UPDATE quote_revision SET accepted_sections = '["circulation"]' WHERE quote_id = $1`, [id])).rejects.toMatchObject({ constraint: 'ck_quote_revision__taken_whole' });
    await expect(test.sql("UPDATE quote_revision SET sections = '[]' WHERE quote_id = $1", [id])).rejects.toMatchObject({ constraint: 'ck_quote_revision__issued_is_final' });
    await expect(test.sql('UPDATE quote_line SET section = NULL WHERE revision_id = (SELECT id FROM quote_revision WHERE quote_id = $1)', [id])).rejects.toMatchObject({ constraint: 'ck_quote_line__issued_is_final' });
    await accept(id).expect(201);
    await expect(test.sql('UPDATE quote_revision SET accepted_net_total = 1, accepted_gross_total = 1 + accepted_tax_total WHERE quote_id = $1', [id])).rejects.toMatchObject({ constraint: 'ck_quote_revision__issued_is_final' });
  });
});
