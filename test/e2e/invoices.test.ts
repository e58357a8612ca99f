import { v7 as uuidv7 } from 'uuid';
import { InvoicesService } from '../../src/features/invoices/index.js';
import { readPdf } from '../documents/read-pdf.js';
import { acceptSimpleWork, acceptWorkedExample } from '../support/accepted-work.js';
import { statementsDuring } from '../support/count-statements.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf } from '../support/test-job.js';
import { usd } from '../support/test-quote.js';

describe('invoices', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterEach(() => test.setClock(null));
  afterAll(() => test.close());

  const draft = async (unitPrice = '100.00', of: TestCompany = company): Promise<string> => {
    const { jobId } = await acceptSimpleWork(of, unitPrice);
    return (await of.owner.post('/v1/invoices', { jobId, basis: 'final' }).expect(201)).body.id as string;
  };
  const issue = (id: string) => company.owner.post(`/v1/invoices/${id}/issue`);
  const voiding = (id: string, reason = 'Billed by mistake') => company.owner.post(`/v1/invoices/${id}/void`, { reason });

  it('bills the worked example to the cent, issues it and prints it', async () => {
    test.setClock('2027-06-02T02:30:00Z');
    const own = await makeTestCompany(test, { paymentInstructions: 'By check to the office' });
    const { jobId, quoteId } = await acceptWorkedExample(own);
    const made = await own.estimator.post('/v1/invoices', { jobId, basis: 'final' });
    expect(made.status).toBe(201);
    expect(made.body).toMatchObject({ state: 'draft', number: null, quoteId, quoteRevision: 1, issuedOn: null, dueOn: null, currency: 'USD', title: 'Renovation of the lower pond' });
    expect(made.body).toMatchObject({ netTotal: usd('5613.11'), grossTotal: usd('5726.99'), paidTotal: usd('0.00'), balanceDue: usd('5726.99') });
    expect(made.body.taxes).toEqual([{ category: 'materials', name: 'Sales tax', rate: '6.25', base: usd('1822.11'), tax: usd('113.88') }]);
    expect(made.body.lines.map((line: { amount: { amount: string } }) => line.amount.amount)).toEqual(['1394.00', '2397.00', '556.67', '780.80', '484.64']);
    expect(made.body.lines[0]).toMatchObject({ kind: 'labor', quantity: '20.5', unit: 'h', unitPrice: usd('68.00'), taxCategory: null });
    expect(made.body.lines[3]).toMatchObject({ kind: 'part', quantity: '640', unit: 'ft2', unitPrice: usd('1.22'), taxCategory: 'materials' });
    expect(Object.keys(made.body.lines[0]).sort()).toEqual(['amount', 'costCode', 'description', 'id', 'kind', 'quantity', 'taxCategory', 'unit', 'unitPrice']);

    const issued = await own.owner.post(`/v1/invoices/${made.body.id}/issue`);
    expect(issued.status).toBe(200);
    // Half past ten in the evening in Detroit is still the day before.
    expect(issued.body).toMatchObject({ state: 'issued', issuedOn: '2027-06-01', dueOn: '2027-07-01', grossTotal: usd('5726.99') });
    const pdf = await own.owner.get(`/v1/invoices/${made.body.id}/document`).buffer(true);
    expect(pdf.status).toBe(200);
    expect(pdf.headers['content-type']).toBe('application/pdf');
    const { text } = await readPdf(pdf.body as Buffer);
    for (const words of [issued.body.number, 'Marta Ellingsworth', 'Lower pond', '$5,726.99 due by July 1, 2027', 'By check to the office', 'J-1001', 'Q-1001']) expect(text).toContain(words);
    for (const secret of ['20.5', '35.25', '$68.00']) expect(text).not.toContain(secret);
  });

  it('shows an hourly price of a fraction of a cent as it is, and bills whole cents', async () => {
    const fine = await makeTestCompany(test, { laborSellRate: '68.1250' });
    const { jobId } = await acceptWorkedExample(fine);
    const { body } = await fine.owner.post('/v1/invoices', { jobId, basis: 'final' }).expect(201);
    // 20.50 h × 68.125 = 1,396.5625
    expect(body.lines[0]).toMatchObject({ quantity: '20.5', unitPrice: usd('68.125'), amount: usd('1396.56') });
  });

  it('answers a repeated draft with the first, and another body with 409', async () => {
    const { jobId } = await acceptSimpleWork(company, '10.00');
    const body = { id: uuidv7(), jobId, basis: 'final' };
    const answers = await Promise.all([1, 2, 3, 4].map(() => company.owner.post('/v1/invoices', body)));
    expect(answers.map((answer) => answer.status).sort()).toEqual([200, 200, 200, 201]);
    for (const answer of answers) expect(answer.body).toEqual(answers[0]?.body);
    expect(answers[0]?.body.lines).toHaveLength(1);
    const other = await company.owner.post('/v1/invoices', { ...body, jobId: (await acceptSimpleWork(company, '11.00')).jobId });
    expect([other.status, other.body.code]).toEqual([409, 'id-taken']);
  });

  it('makes one invoice of a job when it is billed several times at once', async () => {
    const { jobId } = await acceptSimpleWork(company, '12.00');
    const answers = await Promise.all([1, 2, 3, 4].map(() => company.owner.post('/v1/invoices', { jobId, basis: 'final' })));
    expect(answers.map((answer) => answer.status).sort()).toEqual([201, 409, 409, 409]);
    const made = answers.find((answer) => answer.status === 201);
    for (const refused of answers.filter((answer) => answer.status === 409)) {
      expect(refused.body).toMatchObject({ code: 'already-there', detail: expect.stringContaining(made?.body.id), errors: [{ pointer: '/jobId' }] });
    }
  });

  it('refuses what it can not bill, and says where', async () => {
    const missing = await company.owner.post('/v1/invoices', { jobId: uuidv7(), basis: 'final' });
    expect([missing.status, missing.body.code, missing.body.errors[0].pointer]).toEqual([422, 'no-such-reference', '/jobId']);
    const wrong = await company.owner.post('/v1/invoices', { jobId: 'x', basis: 'half', note: 1 });
    expect(wrong.status).toBe(400);
    expect(wrong.body.errors.map((error: { pointer: string }) => error.pointer).sort()).toEqual(['/basis', '/jobId', '/note']);
    const { jobId } = await acceptSimpleWork(company, '5.00');
    expect((await company.owner.post(`/v1/jobs/${jobId}/cancel`, { reason: 'Sold the house' })).status).toBe(200);
    const cancelled = await company.owner.post('/v1/invoices', { jobId, basis: 'final' });
    expect([cancelled.status, cancelled.body.code, cancelled.body.errors[0].pointer]).toEqual([409, 'state-conflict', '/jobId']);
  });

  it('refuses a state and a filter that it does not know', async () => {
    const answer = await company.owner.get('/v1/invoices?state=sent&jobId=7');
    expect(answer.status).toBe(400);
    expect(answer.body.errors.map((error: { pointer: string }) => error.pointer).sort()).toEqual(['/jobId', '/state']);
  });

  it('lists by job and by state, without the lines', async () => {
    const id = await draft();
    const { jobId } = (await company.owner.get(`/v1/invoices/${id}`)).body as { jobId: string };
    const byJob = await company.estimator.get(`/v1/invoices?jobId=${jobId}&state=draft`);
    expect(byJob.body.items.map((item: { id: string }) => item.id)).toEqual([id]);
    expect(byJob.body.items[0].lines).toBeUndefined();
    expect((await company.estimator.get(`/v1/invoices?jobId=${jobId}&state=paid`)).body.items).toEqual([]);
  });

  it('lists many with as few statements as one', async () => {
    await Promise.all([await draft(), await draft()].map((id) => issue(id).expect(200)));
    const ofInvoices = async (path: string) => (await statementsDuring(test, () => company.owner.get(path).expect(200))).filter((sql) => sql.includes('invoice'));
    expect(await ofInvoices('/v1/invoices?limit=1')).toHaveLength(1);
    expect(await ofInvoices('/v1/invoices?limit=200')).toHaveLength(1);
  });

  it('has its version as ETag, and answers 304 to who has it', async () => {
    const id = await draft();
    const read = await company.owner.get(`/v1/invoices/${id}`);
    expect(read.headers['etag']).toBe('"1"');
    expect((await company.owner.get(`/v1/invoices/${id}`).set('if-none-match', '"1"')).status).toBe(304);
    expect((await issue(id)).headers['etag']).toBe('"2"');
  });

  it('answers a repeated issue as the first, with the same number', async () => {
    const id = await draft();
    const answers = await Promise.all([1, 2, 3].map(() => issue(id)));
    for (const answer of answers) expect([answer.status, answer.body]).toEqual([200, answers[0]?.body]);
    expect(answers[0]?.body.number).toMatch(/^INV-\d{4}$/);
  });

  it('numbers twenty issued at once without a gap, though some of them fail', async () => {
    const busy = await makeTestCompany(test);
    const ids: string[] = [];
    for (let n = 0; n < 20; n++) ids.push(await draft('7.00', busy));
    const failing = ids.filter((_, n) => n % 4 === 1);
    await test.sql(`CREATE FUNCTION fail_some() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN
      IF NEW.id = ANY ('{${failing.join(',')}}') AND NEW.number IS NOT NULL THEN RAISE EXCEPTION 'power cut'; END IF; RETURN NEW; END $$`);
    await test.sql('CREATE TRIGGER fail_some BEFORE UPDATE ON invoice FOR EACH ROW EXECUTE FUNCTION fail_some()');
    const first = await Promise.all(ids.map((id) => busy.owner.post(`/v1/invoices/${id}/issue`)));
    await test.sql('DROP TRIGGER fail_some ON invoice');
    expect(first.filter((answer) => answer.status === 200)).toHaveLength(15);
    for (const id of failing) expect((await busy.owner.get(`/v1/invoices/${id}`)).body).toMatchObject({ state: 'draft', number: null });
    const again = await Promise.all(failing.map((id) => busy.owner.post(`/v1/invoices/${id}/issue`)));
    const numbers = [...first, ...again].flatMap((answer) => (answer.status === 200 ? [answer.body.number as string] : []));
    expect(numbers.sort()).toEqual(Array.from({ length: 20 }, (_, n) => `INV-${1001 + n}`));
  });

  it('serves the same bytes for ever, whatever the company and the customer are called later', async () => {
    const renamed = await makeTestCompany(test);
    const { jobId } = await acceptWorkedExample(renamed);
    const { body } = await renamed.owner.post('/v1/invoices', { jobId, basis: 'final' });
    const path = `/v1/invoices/${body.id}/document`;
    const early = await renamed.owner.get(path);
    expect([early.status, early.body.code]).toEqual([409, 'state-conflict']);
    await renamed.owner.post(`/v1/invoices/${body.id}/issue`).expect(200);
    const first = await renamed.owner.get(path).buffer(true);
    expect((await renamed.owner.patch('/v1/company', { name: 'Quite another name', address: 'Elsewhere' })).status).toBe(200);
    const [customer] = (await renamed.owner.get('/v1/customers')).body.items as { id: string }[];
    await renamed.owner.patch(`/v1/customers/${customer?.id}`, { name: 'Somebody else' });
    await renamed.owner.post(`/v1/invoices/${body.id}/void`, { reason: 'Wrong' }).expect(200);
    const second = await renamed.owner.get(path).buffer(true);
    expect((second.body as Buffer).equals(first.body as Buffer)).toBe(true);
    expect((first.body as Buffer).subarray(0, 5).toString()).toBe('%PDF-');
    expect((await renamed.owner.get(path).set('if-none-match', first.headers['etag'] ?? '')).status).toBe(304);
  });

  it('bills whoever accepted when the quote named no customer', async () => {
    const id = await draft('45.00');
    await issue(id);
    const { text } = await readPdf((await company.owner.get(`/v1/invoices/${id}/document`).buffer(true)).body as Buffer);
    expect(text).toContain('Billed to Marta Ellingsworth');
  });

  it('voids what is not paid, keeps its number used, and lets the job be billed anew', async () => {
    const id = await draft('30.00');
    const { number, jobId } = (await issue(id)).body as { number: string; jobId: string };
    const gone = await voiding(id);
    expect(gone.status).toBe(200);
    expect(gone.body).toMatchObject({ state: 'void', number, voidReason: 'Billed by mistake', balanceDue: usd('0.00') });
    expect((await voiding(id, 'Another reason')).body).toEqual(gone.body);
    const reissue = await issue(id);
    expect([reissue.status, reissue.body.code]).toEqual([409, 'state-conflict']);
    const next = await company.owner.post('/v1/invoices', { jobId, basis: 'final' });
    expect(next.status).toBe(201);
    const nextNumber = (await issue(next.body.id)).body.number as string;
    expect(Number(nextNumber.slice(4))).toBe(Number(number.slice(4)) + 1);
  });

  it('voids a draft without using a number up', async () => {
    const id = await draft();
    const gone = await voiding(id);
    expect(gone.body).toMatchObject({ state: 'void', number: null });
    expect((await company.owner.get(`/v1/invoices/${id}/document`)).status).toBe(409);
    const blank = await voiding(await draft(), ' ');
    expect([blank.status, blank.body.errors[0].pointer]).toEqual([400, '/reason']);
  });

  it('takes an invoice over nothing as paid when it is issued', async () => {
    const id = await draft('0.00');
    expect((await issue(id)).body).toMatchObject({ state: 'paid', balanceDue: usd('0.00') });
  });

  it('lets nobody change or delete what was issued, not even by SQL', async () => {
    const id = await draft();
    await issue(id);
    await expect(test.sql("UPDATE invoice SET title = 'Cheaper' WHERE id = $1", [id])).rejects.toThrow('never changes');
    await expect(test.sql('UPDATE invoice_line SET amount = 1 WHERE invoice_id = $1', [id])).rejects.toThrow('never change');
    await expect(test.sql('DELETE FROM invoice_line WHERE invoice_id = $1', [id])).rejects.toThrow('never change');
    await expect(test.sql('DELETE FROM invoice WHERE id = $1', [id])).rejects.toThrow('never deleted');
  });

  it('gives the figures of a job: what was issued net of tax, and what came in', async () => {
    const own = await makeTestCompany(test);
    const { jobId } = await acceptWorkedExample(own);
    const figures = async (): Promise<string[]> => {
      const { invoicedNet, received } = await test.app.get(InvoicesService, { strict: false }).figuresOfJob(actorOf(own), jobId);
      return [invoicedNet.toFixed(), received.toFixed()];
    };
    const { body } = await own.owner.post('/v1/invoices', { jobId, basis: 'final' });
    expect(await figures()).toEqual(['0', '0']);
    await own.owner.post(`/v1/invoices/${body.id}/issue`).expect(200);
    expect(await figures()).toEqual(['5613.11', '0']);
    await own.owner.post('/v1/payments', { invoiceId: body.id, amount: usd('1000.00'), receivedOn: '2027-06-10', method: 'check' }).expect(201);
    expect(await figures()).toEqual(['5613.11', '1000']);
  });

  it('shows nothing to crew roles and nothing to another company', async () => {
    const id = await draft();
    const other = await makeTestCompany(test);
    for (const path of [`/v1/invoices/${id}`, `/v1/invoices/${id}/document`, '/v1/invoices']) {
      expect((await company.crew.get(path)).status).toBe(403);
      expect((await company.crewLead.get(path)).status).toBe(403);
    }
    for (const [verb, body] of [['issue', {}], ['void', { reason: 'Mine' }]] as const) {
      expect((await company.crewLead.post(`/v1/invoices/${id}/${verb}`, body)).status).toBe(403);
      expect((await other.owner.post(`/v1/invoices/${id}/${verb}`, body)).status).toBe(404);
    }
    expect((await other.owner.get(`/v1/invoices/${id}`)).status).toBe(404);
    expect((await other.owner.get('/v1/invoices')).body.items).toEqual([]);
    const { jobId } = (await company.owner.get(`/v1/invoices/${id}`)).body as { jobId: string };
    expect((await other.owner.post('/v1/invoices', { jobId, basis: 'final' })).status).toBe(422);
  });
});
