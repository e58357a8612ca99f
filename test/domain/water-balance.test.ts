import fc from 'fast-check';
import { decimal } from '../../src/domain/decimal.js';
import { convert } from '../../src/domain/quantity/index.js';
import { compareLeaks, evaporation, leakRate, makeUpWater, startUpWater, waterCost, type BucketRun } from '../../src/domain/trade/water-balance/index.js';
import { refusals } from './support.js';

const reading = { readingM: 0.0016, areaPercent: 5 };
const drop = fc.double({ min: -0.05, max: 0.1, noNaN: true });
const run: fc.Arbitrary<BucketRun> = fc.record({ pondDropM: drop, bucketDropM: drop, hours: fc.constant(24) });
const air = { areaM2: 18, waterC: 24, airC: 26, relativeHumidityPercent: 50, windMPerS: 0 };

describe('a bucket test', () => {
  it('has half the error of reading over twice the time', () => {
    fc.assert(
      fc.property(run, (one) => {
        const exactArea = { ...reading, areaPercent: 0 };
        const day = leakRate([one], 18, exactArea).uncertaintyM3PerDay;
        expect(leakRate([{ ...one, hours: 48 }], 18, exactArea).uncertaintyM3PerDay / day).toBeCloseTo(0.5, 12);
      }),
    );
  });

  it('gives the same leak whatever the order of its runs', () => {
    fc.assert(
      fc.property(fc.array(run, { minLength: 1, maxLength: 8 }), (runs) => {
        const [one, other] = [leakRate(runs, 18, reading), leakRate([...runs].reverse(), 18, reading)];
        expect(other.leakM3PerDay).toBeCloseTo(one.leakM3PerDay, 9);
        expect(other.uncertaintyM3PerDay).toBeCloseTo(one.uncertaintyM3PerDay, 9);
      }),
    );
  });

  it('lies between the least and the greatest of its runs', () => {
    fc.assert(
      fc.property(fc.array(run, { minLength: 1, maxLength: 8 }), (runs) => {
        const each = runs.map((one) => leakRate([one], 18, reading).leakM3PerDay);
        const { leakM3PerDay } = leakRate(runs, 18, reading);
        expect(leakM3PerDay).toBeGreaterThanOrEqual(Math.min(...each) - 1e-9);
        expect(leakM3PerDay).toBeLessThanOrEqual(Math.max(...each) + 1e-9);
      }),
    );
  });

  it('is surer with runs that agree, and less sure with runs that do not', () => {
    const agree = { pondDropM: 0.03, bucketDropM: 0.005, hours: 24 };
    const single = leakRate([agree], 18, reading);
    expect(leakRate([agree, agree, agree, agree], 18, reading).uncertaintyM3PerDay).toBeLessThan(single.uncertaintyM3PerDay);
    const apart = leakRate([agree, { ...agree, pondDropM: 0.06 }], 18, reading);
    expect(apart.uncertaintyM3PerDay).toBeGreaterThan(single.uncertaintyM3PerDay);
    expect(apart.scattered).toBe(true);
  });

  it('says rain of a gain, nothing shown of a small leak, and compares the pump on and off', () => {
    const rate = (pondDropM: number) => leakRate([{ pondDropM, bucketDropM: 0.005, hours: 24 }], 18, reading);
    expect(compareLeaks([{ pumpRunning: false, ...rate(-0.03) }]).join()).toMatch(/gained water[^]*Test with the pump on/);
    expect(compareLeaks([{ pumpRunning: false, ...rate(0.005) }])[0]).toMatch(/no leak is shown/);
    expect(compareLeaks([{ pumpRunning: false, ...rate(0.005) }, { pumpRunning: true, ...rate(0.05) }]).at(-1)).toMatch(/loses more with the pump on/);
    expect(compareLeaks([{ pumpRunning: false, ...rate(0.05) }, { pumpRunning: true, ...rate(0.05) }]).at(-1)).toMatch(/nothing shows/);
  });

  it('refuses a test of no time and marks that are exact', () => {
    expect(refusals(() => leakRate([{ pondDropM: 0, bucketDropM: 0, hours: 0 }], 18, reading))).toEqual(['/runs/0/hours']);
    expect(refusals(() => leakRate([{ pondDropM: 0, bucketDropM: 0, hours: 24 }], 18, { ...reading, readingM: 0 }))).toEqual(['/reading']);
  });
});

describe('evaporation', () => {
  it('grows with the surface in proportion, and with wind and warmer water, and falls with humidity', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 3, noNaN: true }), fc.double({ min: 20, max: 30, noNaN: true }), (factor, waterC) => {
        const base = evaporation({ ...air, waterC });
        expect(evaporation({ ...air, waterC, areaM2: 18 * factor }).kgPerHour / base.kgPerHour).toBeCloseTo(factor, 9);
        expect(evaporation({ ...air, waterC: waterC + 1 }).kgPerHour).toBeGreaterThan(base.kgPerHour);
        expect(evaporation({ ...air, waterC, windMPerS: 1 }).kgPerHour).toBeGreaterThan(base.kgPerHour);
        expect(evaporation({ ...air, waterC, relativeHumidityPercent: 60 }).kgPerHour).toBeLessThan(base.kgPerHour);
      }),
    );
  });

  it('is nothing under air that is wetter than the water, and says so', () => {
    const dew = evaporation({ ...air, waterC: 10, airC: 30, relativeHumidityPercent: 90 });
    expect(dew.kgPerHour).toBe(0);
    expect(dew.warnings[0]).toMatch(/nothing evaporates/);
  });

  it('warns in wind, and refuses temperatures that its formula does not cover', () => {
    expect(evaporation(air).warnings).toEqual([]);
    expect(evaporation({ ...air, windMPerS: 2 }).warnings[0]).toMatch(/rough estimate/);
    expect(refusals(() => evaporation({ ...air, waterC: -1 }))).toEqual(['/waterTemperature']);
  });
});

describe('water to buy', () => {
  const pond = { pondM3: 20, displacedM3: 1, systemM3: 0.5, keptM3: 2, rinsingM3: 1, supplyM3PerS: 0.0005 };

  it('is the running volume less what was kept, with the rinsing', () => {
    const { runningM3, supplyM3, fillHours } = startUpWater(pond);
    expect([runningM3, supplyM3]).toEqual([19.5, 18.5]);
    expect(fillHours).toBeCloseTo(18.5 / 0.0005 / 3600, 9);
    expect(startUpWater({ ...pond, supplyM3PerS: null }).fillHours).toBeNull();
    expect(refusals(() => startUpWater({ ...pond, keptM3: 20 }))).toEqual(['/kept']);
    expect(refusals(() => startUpWater({ ...pond, displacedM3: 20 }))).toEqual(['/displaced']);
  });

  it('sums its losses, and rain can at most make them good', () => {
    const season = { areaM2: 18, evaporationMPerDay: 0.004, rainMPerDay: 0.002, leakM3PerDay: 0.05, splashM3PerDay: 0.03, changesM3PerDay: 0.1, days: 150 };
    expect(makeUpWater(season).makeUpM3).toBeCloseTo((18 * 0.002 + 0.18) * 150, 9);
    const wet = makeUpWater({ ...season, rainMPerDay: 0.1 });
    expect(wet.makeUpM3).toBe(0);
    expect(wet.warnings[0]).toMatch(/rain makes the losses good/);
  });

  it('costs by the meter and by whole loads, rounded once', () => {
    const cost = waterCost(convert(5264, 'gal', 'm3'), { amount: decimal('11.40'), basis: '1000 gal' }, { amount: decimal('240'), loadM3: convert(4000, 'gal', 'm3') }, 'USD');
    expect([cost.metered?.toFixed(2), cost.loads, cost.trucked?.toFixed(2), cost.cheaper]).toEqual(['60.01', 2, '480.00', 'metered']);
    expect(waterCost(convert(8000, 'gal', 'm3'), null, { amount: decimal('240'), loadM3: convert(4000, 'gal', 'm3') }, 'USD').loads).toBe(2);
    expect(refusals(() => waterCost(1, null, null, 'USD'))).toEqual(['/metered']);
  });
});
