import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { MOVING_WATER_EXAMPLES } from '../support/moving-water-examples.js';

const CURVE = [{ flow: { value: 0, unit: 'gpm' }, head: { value: 20, unit: 'ft' } }, { flow: { value: 50, unit: 'gpm' }, head: { value: 10, unit: 'ft' } }];

describe('pipes, pumps, weirs, waterfalls and streams', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  const ask = (name: string, changes: object = {}) => company.owner.post(`/v1/calculations/${name}`, { ...MOVING_WATER_EXAMPLES[name], ...changes });
  it('finds where the pump runs, by both friction formulas, in US units', async () => {
    const { body } = await ask('circulation-loop');
    expect([body.hazenWilliams.flow.unit, body.hazenWilliams.head.unit, body.turnoverTime.unit]).toEqual(['gpm', 'ft', 'h']);
    expect(body.hazenWilliams.flow.value).toBeGreaterThan(50);
    expect(Math.abs(body.hazenWilliams.flow.value / body.darcyWeisbach.flow.value - 1)).toBeLessThan(0.03);
    expect(body.turnoverTime.value).toBeCloseTo(5000 / body.hazenWilliams.flow.value / 60, 9);
    expect(body.energyKwhPerYear).toBeCloseTo(0.38 * 8760, 6);
    expect(body.warnings.join()).toMatch(/Run 2 \(discharge\): .* over 5\.0 ft\/s/);
  });

  it('ranks pumps with their costs to the cent', async () => {
    const { body } = await ask('pump-ranking');
    // 3,328.8 kWh × 0.16 = 532.608 a year, rounded; 389 + 5 × 532.61.
    expect(body.ranked[0]).toMatchObject({ index: 0, name: 'P 55', energyCostPerYear: { amount: '532.61', currency: 'USD' }, fiveYearCost: { amount: '3052.05', currency: 'USD' } });
    const none = await ask('pump-ranking', { wantedFlow: { value: 90, unit: 'gpm' } });
    expect([none.body.ranked, none.body.failed[0].kind, none.body.warnings.length]).toEqual([[], 'too-little-flow', 1]);
  });

  it('tells a waterfall\'s flow, and warns of suction and discharge side by side', async () => {
    const fall = await ask('waterfall');
    expect([fall.body.neededFlow.value, fall.body.pumpGivesIt]).toEqual([expect.closeTo(40, 9), true]);
    expect(fall.body.sheetThickness.value).toBeCloseTo(0.795, 2);
    const near = await ask('short-circuiting');
    expect([near.body.longestChord.value, near.body.sharePercent, near.body.tooClose, near.body.warnings.length]).toEqual([24, 37.5, true, 1]);
  });

  it('tells what flow a stream of a wanted depth needs, and that the basin takes what drains back', async () => {
    const { body } = await ask('stream-flow');
    expect(body.wanted.depth).toEqual({ value: 2, unit: 'in' });
    expect([body.wanted.flow.unit, body.drainsBack.unit, body.basinRise.unit]).toEqual(['gpm', 'gal', 'in']);
    expect([body.wanted.depthMost, body.pumpGivesIt, body.basinTakesIt]).toEqual([null, false, true]);
    expect(body.withPump.depth.value).toBeLessThan(2);
    // 20 ft of a section of 26 × 2 in.
    expect(body.drainsBack.value).toBeCloseTo((20 * 12 * 26 * 2) / 231, 6);
    const byFlow = await ask('stream-flow', { depth: null, flow: body.wanted.flow, system: null, pump: null, stoneSize: null, basin: null });
    expect([byFlow.body.withPump, byFlow.body.basinTakesIt, byFlow.body.wanted.roughness]).toEqual([null, null, 0.025]);
    expect(byFlow.body.wanted.depth.value).toBeLessThan(2);
  });

  it.each([
    ['circulation-loop', '/system/runs/0/innerDiameter/value', 0, '/system/runs/0/innerDiameter/value'],
    ['circulation-loop', '/pump/curve/2/head/value', 30, '/pump/curve/2/head'],
    ['circulation-loop', '/system/waterTemperature/value', 95, '/system/waterTemperature/value'],
    ['circulation-loop', '/system/runs/1/roughness', { value: 0.9, unit: 'cm' }, '/system/runs/1/roughness'],
    ['pump-ranking', '/pumps/0/curve/1/flow/value', 0, '/pumps/0/curve/1/flow'],
    ['pump-ranking', '/pumps/1', { name: 'P 60', curve: CURVE, powerWatts: 400, price: { amount: '1.00', currency: 'CAD' } }, '/pumps/1/price/currency'],
    ['waterfall', '/sheetThickness', { value: 1, unit: 'in' }, '/sheetThickness'],
    ['waterfall', '/look', null, '/look'],
    ['waterfall', '/pump', null, '/pump'],
    ['weir-flow', '/channel', null, '/channel'],
    ['weir-flow', '/kind', 'v-notch', '/notchDegrees'],
    ['stream-flow', '/flow', { value: 40, unit: 'gpm' }, '/flow'],
    ['stream-flow', '/fall/value', 300, '/fall'],
    ['stream-flow', '/lining', 'smooth-stone', '/stoneSize'],
    ['stream-flow', '/system', null, '/system'],
    ['stream-flow', '/basin/surface/value', 0, '/basin/surface/value'],
    ['short-circuiting', '/outline/length/value', -1, '/outline/length/value'],
  ])('%s refuses bad input: %s = %p', async (name, at, value, pointer) => {
    const answer = await company.owner.post(`/v1/calculations/${name}`, changed(MOVING_WATER_EXAMPLES[name] ?? {}, at.split('/').slice(1), value));
    expect([answer.status, answer.body.errors[0].pointer]).toEqual([400, pointer]);
  });
});

/** A copy of plain JSON with another value at a place. */
function changed(body: unknown, [key = '', ...deeper]: string[], value: unknown): object {
  const copy = (Array.isArray(body) ? [...(body as unknown[])] : { ...(body as object) }) as Record<string, unknown>;
  copy[key] = deeper.length === 0 ? value : changed(copy[key], deeper, value);
  return copy;
}
