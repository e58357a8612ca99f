import fc from 'fast-check';
import { biologicalFilter, checkFlowLimits, doserSetting, netWaterM3, type DoserInput } from '../../src/domain/trade/filtration/index.js';
import { refusals } from './support.js';

const FILTER = { feedKgPerDay: 0.1, proteinPercent: 35, nitrificationGPerM2Day: 0.3, specificSurfaceM2PerM3: 200, ammoniaLimitMgPerL: 1, removalPercent: 50 };
const DOSER: DoserInput = { water: { basinM3: 20, displacedM3: 2, besidesM3: 0.5 }, settingStepM3: 1, doseM3: 1e-5, doseForM3: 4, everyDays: 1, reservoirM3: 0.0016 };

test('twice the feed takes twice the media and the flow; the span of rates holds the answer', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 100, noNaN: true }), fc.double({ min: 0.1, max: 0.5, noNaN: true }), (feedKgPerDay, rate) => {
      const one = biologicalFilter({ ...FILTER, feedKgPerDay, nitrificationGPerM2Day: rate });
      const two = biologicalFilter({ ...FILTER, feedKgPerDay: 2 * feedKgPerDay, nitrificationGPerM2Day: rate });
      expect(two.mediaAreaM2 / one.mediaAreaM2).toBeCloseTo(2, 9);
      expect(two.flowM3PerS / one.flowM3PerS).toBeCloseTo(2, 9);
      expect(one.leastAreaM2).toBeLessThanOrEqual(one.mediaAreaM2 * (1 + 1e-12));
      expect(one.mostAreaM2).toBeGreaterThanOrEqual(one.mediaAreaM2 * (1 - 1e-12));
    }),
  );
});

test('a rate beyond garden ponds is said, either way', () => {
  expect(biologicalFilter({ ...FILTER, nitrificationGPerM2Day: 0.6 }).warnings.join()).toContain('beyond garden ponds');
  expect(biologicalFilter({ ...FILTER, nitrificationGPerM2Day: 0.05 }).warnings.join()).toContain('below the span');
  expect(biologicalFilter(FILTER).warnings).toHaveLength(1);
});

test('a doser is set to whole steps, never above the water, and less than a step below it', () => {
  fc.assert(
    fc.property(fc.double({ min: 5, max: 500, noNaN: true }), fc.double({ min: 0.1, max: 5, noNaN: true }), (basinM3, settingStepM3) => {
      const { netWaterM3: net, setVolumeM3 } = doserSetting({ ...DOSER, water: { basinM3, displacedM3: 0, besidesM3: 0 }, settingStepM3 });
      expect(setVolumeM3).toBeLessThanOrEqual(net * (1 + 1e-9));
      expect(net - setVolumeM3).toBeLessThan(settingStepM3);
      expect(Math.abs(setVolumeM3 / settingStepM3 - Math.round(setVolumeM3 / settingStepM3))).toBeLessThan(1e-6);
    }),
  );
});

test('a doser keeps a volume that is already a whole number of steps', () => {
  expect(doserSetting({ ...DOSER, water: { basinM3: 0.3, displacedM3: 0, besidesM3: 0 }, settingStepM3: 0.1 }).setVolumeM3).toBeCloseTo(0.3, 12);
});

test('a worked doser: 18.5 m3 set to 18, 45 mL a day, 1.6 L last 5.1 weeks, as is usual', () => {
  const setting = doserSetting(DOSER);
  expect(setting).toMatchObject({ netWaterM3: 18.5, setVolumeM3: 18 });
  expect(setting.doseM3PerDay).toBeCloseTo(4.5e-5, 12);
  expect(setting.reservoirWeeks).toBeCloseTo(1600 / 45 / 7, 9);
  expect(setting.warnings).toHaveLength(1);
});

test('a weekly dose lasts seven times as long as the same every day', () => {
  expect(doserSetting({ ...DOSER, everyDays: 7 }).reservoirWeeks / doserSetting(DOSER).reservoirWeeks).toBeCloseTo(7, 9);
});

test('a reservoir that lasts less or more than four to six weeks is said', () => {
  expect(doserSetting({ ...DOSER, reservoirM3: 0.001 }).warnings.join()).toContain('less than the usual');
  expect(doserSetting({ ...DOSER, reservoirM3: 0.003 }).warnings.join()).toContain('longer than the usual');
});

test('flow limits: too little, too much, within, unknown, each for its share', () => {
  const limits = (count: number, leastM3PerS: number | null, mostM3PerS: number | null) => ({ name: 'filter', count, leastM3PerS, mostM3PerS });
  const result = checkFlowLimits(0.004, 20, [limits(1, 0.005, null), limits(1, null, 0.003), limits(2, 0.001, 0.003), limits(1, null, null)]);
  expect(result.items.map(({ fit }) => fit)).toEqual(['too-little', 'too-much', 'fits', 'unknown']);
  expect(result.items[2]?.flowM3PerS).toBe(0.002);
  expect(result.warnings).toHaveLength(3);
});

test('turnover outside 1 to 2 hours is said', () => {
  expect(checkFlowLimits(0.001, 20, []).warnings.join()).toContain('less than once in 2 hours');
  expect(checkFlowLimits(0.01, 20, []).warnings.join()).toContain('more than once an hour');
  expect(checkFlowLimits(0.004, 20, []).warnings).toEqual([]);
});

test('refuse with the place: rock that fills the basin, a step above the water, limits the wrong way round', () => {
  expect(refusals(() => netWaterM3({ basinM3: 2, displacedM3: 2, besidesM3: 0 }))).toEqual(['/displacedVolume']);
  expect(refusals(() => netWaterM3({ basinM3: 0, displacedM3: 0, besidesM3: 0 }))).toEqual(['/basinVolume']);
  expect(refusals(() => doserSetting({ ...DOSER, settingStepM3: 19 }))).toEqual(['/settingStep']);
  expect(refusals(() => doserSetting({ ...DOSER, reservoirM3: 0 }))).toEqual(['/reservoir']);
  expect(refusals(() => checkFlowLimits(1, 1, [{ name: 'skimmer', count: 1, leastM3PerS: 2, mostM3PerS: 1 }]))).toEqual(['/items/0/mostFlow']);
  expect(refusals(() => checkFlowLimits(0, 1, []))).toEqual(['/flow']);
  expect(refusals(() => biologicalFilter({ ...FILTER, feedKgPerDay: 0 }))).toEqual(['/feedPerDay']);
});
