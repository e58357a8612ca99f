import { v7 as uuidv7 } from 'uuid';
import { acceptSimpleWork } from '../support/accepted-work.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { usd } from '../support/test-quote.js';

describe('payments', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  const draft = async (unitPrice: string): Promise<string> => {
    const { jobId } = await acceptSimpleWork(company, unitPrice);
    return (await company.owner.post('/v1/invoices', { jobId, basis: 'final' }).expect(201)).body.id as string;
  };
  const issued = async (unitPrice = '100.00'): Promise<string> => {
    const id = await draft(unitPrice);
    await company.owner.post(`/v1/invoices/${id}/issue`).expect(200);
    return id;
  };
  const payment = (invoiceId: string, amount: string, more: object = {}): object => ({ invoiceId, amount: usd(amount), receivedOn: '2027-06-10', method: 'check', reference: 'Check 2041', ...more });
  const pay = (invoiceId: string, amount: string, more: object = {}) => company.owner.post('/v1/payments', payment(invoiceId, amount, more));
  const invoice = async (id: string) => (await company.owner.get(`/v1/invoices/${id}`)).body as { state: string; paidTotal: object; balanceDue: object };

  it('pays an invoice in parts until nothing is owed', async () => {
    const id = await issued();
    const first = await pay(id, '40.00');
    expect(first.status).toBe(201);
    expect(first.headers['etag']).toBe('"1"');
    expect(first.body).toMatchObject({ invoiceId: id, amount: usd('40.00'), receivedOn: '2027-06-10', method: 'check', reference: 'Check 2041', voidedAt: null });
    expect(await invoice(id)).toMatchObject({ state: 'part-paid', paidTotal: usd('40.00'), balanceDue: usd('60.00') });
    expect((await pay(id, '60.00', { method: 'bank-transfer', reference: null })).status).toBe(201);
    expect(await invoice(id)).toMatchObject({ state: 'paid', paidTotal: usd('100.00'), balanceDue: usd('0.00') });
    const list = await company.estimator.get(`/v1/payments?invoiceId=${id}`);
    expect(list.body.items.map((item: { amount: object }) => item.amount)).toEqual([usd('60.00'), usd('40.00')]);
    expect((await company.estimator.get(`/v1/payments/${first.body.id}`)).body).toEqual(first.body);
  });

  it('counts a payment that comes several times once, also at once', async () => {
    const id = await issued();
    const body = payment(id, '100.00', { id: uuidv7() });
    const answers = await Promise.all([1, 2, 3, 4].map(() => company.owner.post('/v1/payments', body)));
    expect(answers.map((answer) => answer.status).sort()).toEqual([200, 200, 200, 201]);
    for (const answer of answers) expect(answer.body).toEqual(answers[0]?.body);
    expect(await invoice(id)).toMatchObject({ state: 'paid', paidTotal: usd('100.00') });
    const other = await company.owner.post('/v1/payments', { ...body, method: 'cash' });
    expect([other.status, other.body.code, other.body.errors[0].pointer]).toEqual([409, 'id-taken', '/id']);
    expect(await invoice(id)).toMatchObject({ paidTotal: usd('100.00') });
  });

  it('never takes more than is owed, from ten payers at once either', async () => {
    const id = await issued('100.00');
    const answers = await Promise.all(Array.from({ length: 10 }, () => pay(id, '30.00')));
    expect(answers.map((answer) => answer.status).sort()).toEqual([201, 201, 201, 422, 422, 422, 422, 422, 422, 422]);
    const refused = answers.find((answer) => answer.status === 422);
    expect(refused?.body).toMatchObject({ code: 'not-possible', errors: [{ pointer: '/amount/amount', detail: 'must be at most the balance of 10.00 USD' }] });
    expect(await invoice(id)).toMatchObject({ state: 'part-paid', paidTotal: usd('90.00'), balanceDue: usd('10.00') });
    expect((await company.owner.get(`/v1/payments?invoiceId=${id}`)).body.items).toHaveLength(3);
  });

  it('takes no payment for a draft, a paid or a void invoice', async () => {
    const [open, full, gone] = [await draft('10.00'), await issued('10.00'), await issued('10.00')];
    await pay(full, '10.00').expect(201);
    await company.owner.post(`/v1/invoices/${gone}/void`, { reason: 'Wrong' }).expect(200);
    for (const id of [open, full, gone]) {
      const answer = await pay(id, '1.00');
      expect([answer.status, answer.body.code, answer.body.errors[0].pointer]).toEqual([409, 'state-conflict', '/invoiceId']);
    }
  });

  it.each([
    ['another currency', { amount: { amount: '5.00', currency: 'EUR' } }, 400, '/amount/currency'],
    ['nothing', { amount: usd('0.00') }, 400, '/amount/amount'],
    ['less than nothing', { amount: usd('-5.00') }, 400, '/amount/amount'],
    ['part of a cent', { amount: usd('5.001') }, 400, '/amount/amount'],
    ['a number', { amount: { amount: 5, currency: 'USD' } }, 400, '/amount/amount'],
    ['a method of its own', { method: 'barter' }, 400, '/method'],
    ['a day that is none', { receivedOn: '2027-02-30' }, 400, '/receivedOn'],
    ['a field of its own', { tip: true }, 400, '/tip'],
    ['an invoice that is not there', { invoiceId: '0199c3a2-5b1e-7c44-9d0a-3f6b1c2d4e5f' }, 422, '/invoiceId'],
  ])('refuses %s, and counts nothing', async (_, change, status, pointer) => {
    const id = await issued('20.00');
    const answer = await pay(id, '5.00', change);
    expect([answer.status, answer.body.errors[0].pointer]).toEqual([status, pointer]);
    expect(await invoice(id)).toMatchObject({ state: 'issued', paidTotal: usd('0.00') });
  });

  it('voids a payment once, and the invoice owes the amount again', async () => {
    const id = await issued('50.00');
    const first = (await pay(id, '20.00')).body.id as string;
    const second = (await pay(id, '30.00')).body.id as string;
    const answers = await Promise.all([1, 2, 3].map(() => company.owner.post(`/v1/payments/${second}/void`, { reason: 'The check was returned' })));
    for (const answer of answers) expect([answer.status, answer.body]).toEqual([200, answers[0]?.body]);
    expect(answers[0]?.body).toMatchObject({ voidReason: 'The check was returned', amount: usd('30.00') });
    expect(answers[0]?.body.voidedAt).not.toBeNull();
    expect(await invoice(id)).toMatchObject({ state: 'part-paid', paidTotal: usd('20.00'), balanceDue: usd('30.00') });
    await company.owner.post(`/v1/payments/${first}/void`, { reason: 'Another customer\'s' }).expect(200);
    expect(await invoice(id)).toMatchObject({ state: 'issued', paidTotal: usd('0.00'), balanceDue: usd('50.00') });
  });

  it('does not void an invoice before its payments are', async () => {
    const id = await issued('50.00');
    const { body } = await pay(id, '20.00');
    const refused = await company.owner.post(`/v1/invoices/${id}/void`, { reason: 'Wrong' });
    expect([refused.status, refused.body.code]).toEqual([409, 'state-conflict']);
    expect(refused.body.detail).toContain('20.00 USD');
    await company.owner.post(`/v1/payments/${body.id}/void`, { reason: 'Sent back' }).expect(200);
    expect((await company.owner.post(`/v1/invoices/${id}/void`, { reason: 'Wrong' })).body).toMatchObject({ state: 'void' });
  });

  it('either pays or voids an invoice when both come at once', async () => {
    for (let round = 0; round < 5; round++) {
      const id = await issued('9.00');
      const [paid, voided] = await Promise.all([pay(id, '9.00'), company.owner.post(`/v1/invoices/${id}/void`, { reason: 'Wrong' })]);
      expect([[201, 409], [409, 200]]).toContainEqual([paid.status, voided.status]);
    }
  });

  it('changes and deletes no payment, not even by SQL', async () => {
    const { body } = await pay(await issued(), '1.00');
    await expect(test.sql('UPDATE payment SET amount = 2 WHERE id = $1', [body.id])).rejects.toThrow('never changes');
    await expect(test.sql('DELETE FROM payment WHERE id = $1', [body.id])).rejects.toThrow('never changes');
  });

  it('shows nothing to crew roles and nothing to another company', async () => {
    const id = await issued();
    const { body } = await pay(id, '1.00');
    const other = await makeTestCompany(test);
    for (const client of [company.crew, company.crewLead]) {
      expect((await client.get('/v1/payments')).status).toBe(403);
      expect((await client.get(`/v1/payments/${body.id}`)).status).toBe(403);
      expect((await client.post('/v1/payments', payment(id, '1.00'))).status).toBe(403);
      expect((await client.post(`/v1/payments/${body.id}/void`, { reason: 'Mine' })).status).toBe(403);
    }
    expect((await other.owner.get(`/v1/payments/${body.id}`)).status).toBe(404);
    expect((await other.owner.post(`/v1/payments/${body.id}/void`, { reason: 'Mine' })).status).toBe(404);
    expect((await other.owner.post('/v1/payments', payment(id, '1.00'))).status).toBe(422);
    expect((await other.owner.get('/v1/payments')).body.items).toEqual([]);
  });
});
