import { SITE_WORK_EXAMPLES } from '../support/site-work-examples.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';

describe('calculations for work on the site', () => {
  let test: TestApp;
  let company: TestCompany;
  const ask = (name: string, changes: object = {}) => company.estimator.post(`/v1/calculations/${name}`, { ...SITE_WORK_EXAMPLES[name], ...changes });
  const refusedAt = async (name: string, changes: object): Promise<[number, string]> => {
    const { status, body } = await ask(name, changes);
    return [status, body.errors[0].pointer];
  };

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  it('size a liner by its profile, and refuse an outline that has no length', async () => {
    const { body } = await ask('liner-sheet', { profile: [{ drop: { value: 2.5, unit: 'ft' }, run: { value: 0, unit: 'ft' } }] });
    expect(body.length.value).toBeCloseTo(23, 9);
    expect(body.width.value).toBeCloseTo(18, 9);
    expect(body.underlaymentArea.value).toBeCloseTo(414, 6);
    expect(await refusedAt('liner-sheet', { outline: { shape: 'measured', area: { value: 176, unit: 'ft2' }, perimeter: { value: 54, unit: 'ft' } } })).toEqual([400, '/outline/shape']);
    expect(await refusedAt('liner-sheet', { outline: { shape: 'polygon', unit: 'ft', points: [[0, 0], [9, 9], [9, 0], [0, 9]] } })).toEqual([400, expect.stringMatching(/^\/outline\/points\/\d$/)]);
    expect(await refusedAt('liner-sheet', { profile: [{ drop: { value: 1, unit: 'ft' }, run: { value: 6, unit: 'ft' } }] })).toEqual([400, '/profile']);
  });

  it('put the cheapest cut first, to the cent, and refuse a mix of currencies', async () => {
    const { body } = await ask('liner-cut');
    const costs = body.plans.map((plan: { cost: { amount: string } }) => Number(plan.cost.amount));
    expect(costs).toEqual([...costs].sort((a: number, b: number) => a - b));
    // 2 × 23 ft × 10 ft × 0.87 + 23 ft of seam × 2.15 = 400.20 + 49.45; one strip of the wide roll costs 469.20.
    expect(body.plans[0]).toMatchObject({ seams: 1, strips: [{ roll: 'Liner 45 mil, 10 ft', count: 2, pieces: 1, rolls: 1 }], cost: { amount: '449.65', currency: 'USD' } });
    const [first, second] = (SITE_WORK_EXAMPLES['liner-cut'] as { rolls: object[] }).rolls;
    expect(await refusedAt('liner-cut', { rolls: [first, { ...second, price: { amount: '1.02', currency: 'EUR' } }] })).toEqual([400, '/rolls/1/price/currency']);
    expect(await refusedAt('liner-cut', { rolls: [first, { ...second, price: null }] })).toEqual([400, '/rolls/1/price']);
    expect(await refusedAt('liner-cut', { rolls: [{ ...first, price: null }] })).toEqual([400, '/seamPrice']);
  });

  it('tell a leak with its uncertainty for each state of the pump', async () => {
    const { body } = await ask('bucket-test');
    expect(body.leaks.map((leak: { pumpRunning: boolean }) => leak.pumpRunning)).toEqual([false, true]);
    expect(body.leaks[1].leakPerDay.value).toBeCloseTo(109.7, 1);
    expect(body.leaks[1].leakShown).toBe(true);
    expect(body.leaks[1].uncertainty.value).toBeGreaterThan(0);
  });

  it('take reclaimed stone off what is bought', async () => {
    const { body } = await ask('stone-edge');
    expect(body.mass.value - body.toBuy.value).toBeCloseTo(1, 9);
  });

  it('warn at exactly 24 in of water, and always name who decides', async () => {
    const { body } = await ask('barrier-cautions', { waterDepth: { value: 24, unit: 'in' } });
    expect(body.cautions.map(({ text }: { text: string }) => text).join('\n')).toMatch(/At 24 in[^]*building official decide/);
  });
});
