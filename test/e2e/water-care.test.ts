import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { WATER_CARE_EXAMPLES } from '../support/water-care-examples.js';

describe('filters, doses and life in the water', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  const ask = (name: string, changes: object = {}) => company.crew.post(`/v1/calculations/${name}`, { ...WATER_CARE_EXAMPLES[name], ...changes });

  it.each([
    ['biological-filter', 'mediaVolume', { value: 1.72, unit: 'ft3' }],
    ['filter-flow', 'turnover', { value: 0.9, unit: 'h' }],
    ['doser-setting', 'setVolume', { value: 4500, unit: 'gal' }],
    ['concentration-dose', 'dose', { value: 0.01669, unit: 'lb' }],
    ['dechlorination-dose', 'dose', { value: 0.05842, unit: 'lb' }],
    ['salt-dose', 'dose', { value: 8.3454, unit: 'lb' }],
    ['volume-from-salt', 'volume', { value: 1198.3, unit: 'gal' }],
    ['alkalinity-dose', 'dose', { value: 0.5604, unit: 'lb' }],
    ['mosquito-breeding', 'breedingArea', { value: 30, unit: 'ft2' }],
  ])('%s answers its %s in the unit that it says', async (name, field, { value, unit }) => {
    const quantity = (await ask(name)).body[field];
    expect(quantity.unit).toBe(unit);
    expect(Math.abs(quantity.value / value - 1)).toBeLessThan(0.001);
  });

  it.each([
    ['oxygen-saturation', 'saturationMgPerL', 8.76],
    ['un-ionized-ammonia', 'unionizedMgPerL', 0.0502],
    ['biological-filter', 'ammoniaGPerDay', 2.92],
    ['doser-setting', 'reservoirWeeks', 5.291],
  ])('%s answers its %s', async (name, field, value) => {
    expect(Math.abs((await ask(name)).body[field] / value - 1)).toBeLessThan(0.001);
  });

  it('takes Fahrenheit and Celsius alike', async () => {
    const [us, si] = await Promise.all([ask('oxygen-saturation'), ask('oxygen-saturation', { temperature: { value: 20, unit: 'degC' } })]);
    expect(us.body.saturationMgPerL).toBeCloseTo(si.body.saturationMgPerL, 12);
  });

  it('compares the filter that is there with what the load needs', async () => {
    const short = await ask('biological-filter', { mediaArea: { value: 50, unit: 'ft2' }, flow: { value: 0.5, unit: 'gpm' } });
    expect(short.body.warnings.slice(0, 2).join()).toMatch(/less media surface.*less ammonia to the filter/s);
    const enough = await ask('biological-filter', { mediaArea: { value: 200, unit: 'ft2' } });
    expect(enough.body.warnings.join()).not.toMatch(/less media surface|less ammonia to the filter/);
  });

  it.each([
    ['oxygen-saturation', { pressureMmHg: 700 }, '/altitude'],
    ['oxygen-saturation', { temperature: { value: 41, unit: 'degC' } }, '/temperature/value'],
    ['biological-filter', { feedPerDay: { value: 1, unit: 'lb' } }, '/feedPerDay'],
    ['filter-flow', { items: [{ name: 'skimmer', leastFlow: { value: 2, unit: 'gpm' }, mostFlow: { value: 1, unit: 'gpm' } }] }, '/items/0/mostFlow'],
    ['doser-setting', { displacedVolume: { value: 6000, unit: 'gal' } }, '/displacedVolume'],
    ['salt-dose', { presentPpt: 2 }, '/targetPpt'],
    ['fish-season', { periods: [{ label: 'May', temperature: { value: 200, unit: 'degF' } }] }, '/periods/0/temperature/value'],
    ['mosquito-breeding', { zones: [{ name: 'edge', area: { value: 1, unit: 'gal' } }] }, '/zones/0/area/unit'],
  ])('%s refuses %j at its place', async (name, changes, pointer) => {
    const answer = await ask(name, changes);
    expect([answer.status, answer.body.errors[0].pointer]).toEqual([400, pointer]);
  });
});
