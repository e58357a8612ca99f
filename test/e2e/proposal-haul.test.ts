import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond } from '../support/test-pond.js';
import { make } from '../support/test-quote.js';

const q = (value: number, unit: string): object => ({ value, unit });

/** 24 × 16 ft with 8.3776 yd3 of sediment. */
const SURVEY = {
  surveyedOn: '2026-05-04',
  outline: { shape: 'ellipse', length: q(24, 'ft'), width: q(16, 'ft') },
  probes: { unit: 'in', readings: [{ toSediment: 18, toBottom: 27 }, { toSediment: 20, toBottom: 30 }, { toSediment: 22, toBottom: 30 }, { toSediment: 16, toBottom: 25 }] },
};
/** Loose ground takes 1 / 0.5 h/m3 to dig: 1.5291 h/yd3. 14.7 barrows of 0.085 m3 take (2 × 18.288 / 0.9 + 30) / 0.75 s each: 0.2942 h/yd3. */
const BARROW = { carrier: 'barrow', distance: q(60, 'ft'), handDigging: 'loose' };

interface Side {
  hoursPerYd3: number | null;
  hours: string | null;
  verdict: string;
}

interface Item {
  scope: string;
  labor: { hours: string }[];
  haul: { work: string; quantity: { value: number; unit: string } | null; flat: Side | null; cycle: Side; band: object | null; laborRule: Record<string, string> | null; warnings: string[] } | null;
}

describe('the haul cycle beside a flat rate', () => {
  let test: TestApp;
  let company: TestCompany;
  let survey: string;
  const answerTo = (body: object, surveyId = survey) => company.estimator.post(`/v1/surveys/${surveyId}/proposal`, body);
  const propose = async (scope: string[], haul: object | null = BARROW, surveyId = survey): Promise<Item[]> => {
    const answer = await answerTo({ scope, haul }, surveyId);
    expect([answer.status, answer.status === 200 ? '' : answer.text]).toEqual([200, '']);
    return answer.body.items as Item[];
  };
  const rule = (costCode: string, hoursPerUnit: string, more: object = {}): Promise<string> => make(company.owner, '/v1/labor-rules', { costCode, name: costCode, quantity: 'sedimentVolume', unit: 'yd3', setupHours: '3', hoursPerUnit, minimumHours: '6', effectiveFrom: '2026-01-01', ...more });

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    const { featureId } = await makeTestPond(company);
    survey = await make(company.owner, '/v1/surveys', { featureId, ...SURVEY });
    await rule('cleanout', '1.75');
    await rule('hauling', '0.35', { setupHours: '1', minimumHours: '0' });
  });
  afterAll(() => test.close());

  it('compares digging and hauling with the one rule, on the same sediment', async () => {
    const [item] = await propose(['clean-out']);
    expect(item?.haul).toMatchObject({ work: 'digging-and-hauling', flat: { hoursPerYd3: 1.75, hours: item?.labor[0]?.hours, verdict: 'usual' }, cycle: { verdict: 'usual' } });
    expect(item?.haul?.quantity?.value).toBeCloseTo(8.3776, 3);
    expect(item?.haul?.cycle.hoursPerYd3).toBeCloseTo(1.5291 + 0.2942, 3);
    // 3 + 1.8233 × 8.3776 = 18.27, rounded up to a quarter of an hour.
    expect(item?.haul?.cycle.hours).toBe('18.5');
    expect(item?.haul?.warnings).toEqual([]);
  });

  it('shares the work between clean-out and haul-away, and judges both together', async () => {
    const [digging, hauling] = await propose(['haul-away', 'clean-out']);
    expect([digging?.haul?.work, hauling?.haul?.work]).toEqual(['digging', 'hauling']);
    expect(digging?.haul?.cycle.hoursPerYd3).toBeCloseTo(1.5291, 3);
    expect(hauling?.haul?.cycle.hoursPerYd3).toBeCloseTo(0.2942, 3);
    expect(hauling?.haul?.flat).toEqual({ hoursPerYd3: 0.35, hours: hauling?.labor[0]?.hours, verdict: 'usual' });
    // 0.35 alone lies far below the band, which speaks of the whole work.
    expect((await propose(['haul-away']))[0]?.haul?.flat?.verdict).toBe('doubted');
  });

  it('gives a labor rule that can be made as it is, and then plans the hours it promised', async () => {
    const other = await makeTestCompany(test);
    const { featureId } = await makeTestPond(other);
    const theirs = await make(other.owner, '/v1/surveys', { featureId, ...SURVEY });
    const ask = async (): Promise<Item | undefined> => ((await other.estimator.post(`/v1/surveys/${theirs}/proposal`, { scope: ['clean-out'], haul: BARROW })).body.items as Item[])[0];
    const before = await ask();
    expect([before?.haul?.flat, before?.labor]).toEqual([null, []]);
    const made = await other.owner.post('/v1/labor-rules', before?.haul?.laborRule ?? {});
    expect([made.status, made.body.effectiveFrom, made.body.hoursPerUnit]).toEqual([201, '2026-05-04', '1.8233']);
    const after = await ask();
    expect(after?.labor[0]?.hours).toBe(before?.haul?.cycle.hours);
    expect(after?.haul?.flat?.hours).toBe(after?.haul?.cycle.hours);
  });

  it('keeps the set-up and the fewest hours of the rule in force, in whatever unit it is', async () => {
    const other = await makeTestCompany(test);
    const { featureId } = await makeTestPond(other);
    const theirs = await make(other.owner, '/v1/surveys', { featureId, ...SURVEY, accessFactor: '1.2' });
    await make(other.owner, '/v1/labor-rules', { costCode: 'cleanout', name: 'By m3', quantity: 'sedimentVolume', unit: 'm3', setupHours: '2.5', hoursPerUnit: '10', minimumHours: '4', effectiveFrom: '2026-01-01' });
    const { items } = (await other.estimator.post(`/v1/surveys/${theirs}/proposal`, { scope: ['clean-out'], haul: BARROW })).body as { items: Item[] };
    expect(items[0]?.haul?.flat?.hoursPerYd3).toBeCloseTo(7.64555, 4);
    expect(items[0]?.haul?.flat?.verdict).toBe('doubted');
    expect(items[0]?.haul?.laborRule).toMatchObject({ setupHours: '2.5', minimumHours: '4', unit: 'yd3' });
    expect(items[0]?.haul?.warnings.join()).toContain('access factor of 1.2');
  });

  it('judges no machine, and leaves the digging out where the haul tells none', async () => {
    const [item] = await propose(['clean-out'], { carrier: 'tracked-barrow', distance: q(30, 'm'), excavator: { bucketVolume: q(0.05, 'm3') } });
    expect([item?.haul?.band, item?.haul?.flat?.verdict, item?.haul?.cycle.verdict]).toEqual([null, 'not-judged', 'not-judged']);
    const ready = await propose(['clean-out', 'haul-away'], { carrier: 'barrow', distance: q(60, 'ft') });
    expect(ready.map(({ haul }) => haul?.work ?? null)).toEqual([null, 'hauling']);
  });

  it('has no hours without rod readings, and no rule of more hours than one can hold', async () => {
    const { featureId } = await makeTestPond(company);
    const unprobed = await make(company.owner, '/v1/surveys', { featureId, ...SURVEY, probes: null });
    const [item] = await propose(['clean-out'], BARROW, unprobed);
    expect([item?.haul?.quantity, item?.haul?.flat?.hours, item?.haul?.cycle.hours]).toEqual([null, null, null]);
    const [endless] = await propose(['clean-out'], { ...BARROW, carrier: 'barrow', distance: q(1000, 'm'), slopePercent: 60, efficiency: 0.1, carrierVolume: q(0.005, 'm3'), feetPerMinute: 10 });
    expect([endless?.haul?.laborRule, endless?.haul?.cycle.hours, endless?.haul?.cycle.verdict]).toEqual([null, null, 'doubted']);
  });

  it('is not there for other scopes, or when no haul is asked about', async () => {
    expect((await propose(['edge', 'clean-out'])).map(({ scope, haul }) => [scope, haul === null])).toEqual([['clean-out', false], ['edge', true]]);
    expect((await propose(['clean-out'], null))[0]?.haul).toBeNull();
  });

  it.each([
    ['a gate narrower than any carrier', { ...BARROW, gateWidth: q(20, 'in') }, '/haul/gateWidth'],
    ['a carrier that does not pass', { ...BARROW, carrier: 'compact-loader', gateWidth: q(30, 'in') }, '/haul/carrier'],
    ['digging twice', { ...BARROW, excavator: { bucketVolume: q(0.05, 'm3') } }, '/haul/excavator'],
    ['a way without a length', { carrier: 'barrow' }, '/haul/distance'],
    ['a helicopter', { ...BARROW, carrier: 'helicopter' }, '/haul/carrier'],
  ])('refuses %s', async (_what, haul, pointer) => {
    const { status, body } = await answerTo({ scope: ['clean-out'], haul });
    expect([status, body.code, body.errors[0].pointer]).toEqual([400, 'invalid-input', pointer]);
  });
});
