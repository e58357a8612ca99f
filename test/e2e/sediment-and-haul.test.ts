import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { SEDIMENT_EXAMPLES } from '../support/sediment-examples.js';

describe('sediment and haul', () => {
  let test: TestApp;
  let company: TestCompany;
  const ask = (name: string, change: object = {}) => company.crew.post(`/v1/calculations/${name}`, { ...SEDIMENT_EXAMPLES[name], ...change });
  const refused = async (name: string, change: object): Promise<string[]> => {
    const answer = await ask(name, change);
    expect(answer.status).toBe(400);
    return answer.body.errors.map(({ pointer }: { pointer: string }) => pointer);
  };

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  it('place a pyramid of sediment under a square exactly', async () => {
    const outline = { shape: 'polygon', unit: 'ft', points: [[0, 0], [18, 0], [18, 18], [0, 18]] };
    const { body } = await ask('sediment-by-place', { outline, probes: { unit: 'in', readings: [{ at: [9, 9], toSediment: 18, toBottom: 27 }] }, edge: 'zero', edgeThickness: null, edgeDepth: null });
    expect(body.sedimentByPlace).toEqual({ value: expect.closeTo(3, 9), unit: 'yd3' });
    expect(body.sedimentByMean).toEqual({ value: expect.closeTo(9, 9), unit: 'yd3' });
    expect(body.waterByPlace.value).toBeCloseTo((324 * 2.25 / 3) * 7.480519480519, 6);
    expect(body.waterNowByPlace.value).toBeCloseTo((324 * 1.5 / 3) * 7.480519480519, 6);
    expect(body).toMatchObject({ standardError: null, extraReadings: null, places: 1, triangles: 4, coveredArea: { value: expect.closeTo(324, 9) } });
  });

  it('refuse readings and edges that cannot be, at their place', async () => {
    expect(await refused('sediment-by-place', { edgeDepth: null })).toEqual(['/edgeDepth']);
    expect(await refused('sediment-by-place', { edgeDepth: { value: 1, unit: 'in' } })).toEqual(['/edgeDepth']);
    expect(await refused('sediment-by-place', { edge: 'zero' })).toEqual(['/edgeThickness']);
    expect(await refused('sediment-by-place', { edge: 'shore-readings', edgeThickness: null, edgeDepth: null })).toEqual(['/edge']);
    expect(await refused('sediment-by-place', { edge: 'steep' })).toEqual(['/edge']);
    expect(await refused('sediment-by-place', { probes: { unit: 'in', readings: [{ at: [3, 3], toSediment: 9, toBottom: 3 }] } })).toEqual(['/probes/readings/0/toBottom']);
    expect(await refused('sediment-by-place', { outline: { shape: 'polygon', unit: 'ft', points: [[0, 0], [9, 9], [9, 0], [0, 9]] } })).toHaveLength(1);
    expect(await refused('sediment-by-place', { outline: { shape: 'ellipse', length: { value: 9, unit: 'ft' }, width: { value: 9, unit: 'ft' } } })).toEqual(['/outline/shape']);
  });

  it('count wet and drained loads, and what runs off', async () => {
    const { body } = await ask('dewatering');
    // 40 yd3 at 300 %: 39.92 tons wet, 48 yd3 dug. At 100 %: 0.4078 of the volume, half of the weight.
    expect(body.wetLoads).toMatchObject({ loads: 6, byVolume: 5, byWeight: 6, limitedBy: 'weight' });
    expect(body.drainedLoads).toMatchObject({ loads: 3, byVolume: 2, byWeight: 3 });
    expect(body.drainedAsLoaded.weight.value / body.dug.weight.value).toBeCloseTo(0.5, 9);
    expect(body.drainage.value).toBeCloseTo(40 * (1 - 3.65 / 8.95) * 201.974025974, 3);
    expect(await refused('dewatering', { drainedWaterPercent: 400 })).toEqual(['/drainedWaterPercent']);
    expect(await refused('dewatering', { vehicle: { boxVolume: { value: 0, unit: 'yd3' }, payload: { value: 7, unit: 'ton' } } })).toEqual(['/vehicle/boxVolume/value']);
  });

  it('give the weight in place, dug and drained, and warn when a truck weighs out first', async () => {
    const { body } = await ask('sediment-weight');
    expect([body.inPlace.volume.value, body.dug.volume.value, body.drained.volume.value].map((value: number) => Number(value.toFixed(2)))).toEqual([12, 14.4, 4.93]);
    expect(body.weightPerFt3).toEqual({ value: expect.closeTo(78.7, 1), unit: 'lb' });
    const heavy = await ask('truck-loads', { weight: { value: 17.5, unit: 'ton' } });
    expect(heavy.body).toMatchObject({ loads: { loads: 3, limitedBy: 'weight' }, warnings: [expect.stringContaining('overloaded')] });
    expect((await ask('organic-mud')).body.densityKgPerM3).toBeCloseTo(1065.1, 1);
  });

  it('offer hours that a labor rule takes, with the band they are held against', async () => {
    const { body } = await ask('haul-cycle');
    expect(body.laborRule).toEqual({ quantity: 'sedimentVolume', unit: 'yd3', hoursPerUnit: body.hoursPerYd3.toFixed(2) });
    expect(body.diggingHoursPerYd3 + body.haulingHoursPerYd3).toBeCloseTo(body.hoursPerYd3, 9);
    expect(body.hoursPerYd3).toBeGreaterThan(body.band.usualFrom);
    expect(body.hoursPerYd3).toBeLessThan(body.band.usualTo);
    const machine = await ask('haul-cycle', { carrier: 'tracked-barrow', handDigging: null, excavator: { bucketVolume: { value: 0.05, unit: 'yd3' } }, carrierVolume: null, carrierPayload: null, feetPerMinute: null });
    expect(machine.body).toMatchObject({ band: null, fitting: ['barrow', 'tracked-barrow'] });
    expect(machine.body.diggingHoursPerYd3).toBeCloseTo(1.25 / ((3600 * 0.05 * 0.9 * 0.75) / 25), 9);
  });

  it('refuse a gate narrower than any machine, and two ways of digging at once', async () => {
    expect(await refused('haul-cycle', { gateWidth: { value: 20, unit: 'in' } })).toEqual(['/gateWidth']);
    expect(await refused('haul-cycle', { carrier: 'compact-loader' })).toEqual(['/carrier']);
    expect(await refused('haul-cycle', { excavator: { bucketVolume: { value: 0.05, unit: 'yd3' } } })).toEqual(['/excavator']);
  });
});
