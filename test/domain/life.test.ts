import fc from 'fast-check';
import { FISH_STATES, fishLoad, fishSeason, mosquitoBreeding, mosquitoDevelopmentDays, SPECIES, SPECIES_RANGES, stateAt, type FishLoadInput, type WaterZone } from '../../src/domain/trade/life/index.js';
import { refusals } from './support.js';

const LOAD: FishLoadInput = { fishKg: 9, volumeM3: 10, surfaceM2: 18, feedPercentPerDay: 1, proteinPercent: 35, aerated: false, mediaAreaM2: 10, nitrificationGPerM2Day: 0.3 };
const zone = (more: Partial<WaterZone>): WaterZone => ({ name: 'edge', areaM2: 5, moving: false, fish: false, choked: false, ...more });
const breeding = (zones: WaterZone[], flowM3PerS = 0.003) => mosquitoBreeding({ celsius: 24, volumeM3: 10, flowM3PerS, zones });

test('the tightest limit is the least of all', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 100, noNaN: true }), fc.double({ min: 1, max: 100, noNaN: true }), fc.double({ min: 0.1, max: 100, noNaN: true }), (volumeM3, surfaceM2, mediaAreaM2) => {
      const { limits, tightest } = fishLoad({ ...LOAD, volumeM3, surfaceM2, mediaAreaM2 });
      expect(tightest.mostFishKg).toBe(Math.min(...limits.map(({ mostFishKg }) => mostFishKg)));
      expect(tightest.usedPercent).toBe(Math.max(...limits.map(({ usedPercent }) => usedPercent)));
    }),
  );
});

test('more feed leaves room for fewer fish by feed and filter, and does not touch volume and surface', () => {
  const most = (feedPercentPerDay: number) => fishLoad({ ...LOAD, feedPercentPerDay }).limits.map(({ mostFishKg }) => mostFishKg);
  const [volume = 0, surface = 0, feed = 0, filter = 0] = most(1);
  const twice = most(2);
  expect(twice.slice(0, 2)).toEqual([volume, surface]);
  expect(twice[2]).toBeCloseTo(feed / 2, 9);
  expect(twice[3]).toBeCloseTo(filter / 2, 9);
});

test('aeration lifts the feed limit and an unknown filter is not checked, and both are said', () => {
  const load = fishLoad({ ...LOAD, aerated: true, mediaAreaM2: null });
  expect(load.limits.map(({ measure }) => measure)).toEqual(['volume', 'surface']);
  expect(load.warnings.join()).toMatch(/failed aerator.*filter is not checked/s);
});

test('too many fish are said', () => {
  expect(fishLoad({ ...LOAD, fishKg: 60 }).warnings.join()).toContain('More fish than');
  expect(fishLoad({ ...LOAD, fishKg: 1 }).warnings.join()).not.toContain('More fish than');
});

test.each(SPECIES)('%s: its temperatures are in order and every warmer degree is a later state', (species) => {
  const { diesAtCold, feedFrom, growFrom, bestFrom, bestTo, stressAbove, diesAtHeat } = SPECIES_RANGES[species];
  const limits = [diesAtCold ?? -5, feedFrom, growFrom, bestFrom, bestTo, stressAbove, diesAtHeat];
  expect([...limits].sort((a, b) => a - b)).toEqual(limits);
  fc.assert(
    fc.property(fc.double({ min: -2, max: 44, noNaN: true }), fc.double({ min: 0.01, max: 1, noNaN: true }), (celsius, more) => {
      expect(FISH_STATES.indexOf(stateAt(species, celsius + more))).toBeGreaterThanOrEqual(FISH_STATES.indexOf(stateAt(species, celsius)));
    }),
  );
});

test('a trout in a warm garden pond does not live through July', () => {
  const season = fishSeason('rainbow-trout', [{ label: 'January', celsius: 3 }, { label: 'July', celsius: 27 }]);
  expect(season).toMatchObject({ edible: true, survives: false });
  expect(season.periods.map(({ state }) => state)).toEqual(['no-feed', 'deadly-heat']);
  expect(season.warnings.join()).toMatch(/never release.*must not be eaten.*heat of some period/s);
});

test('mosquitoes develop faster in warmer water, without a jump where the published points end', () => {
  fc.assert(
    fc.property(fc.double({ min: 9.8, max: 44, noNaN: true }), (celsius) => {
      const [here = 0, warmer = 0] = [celsius, celsius + 0.001].map((value) => mosquitoDevelopmentDays(value) ?? Number.NaN);
      expect(warmer).toBeLessThan(here);
      expect(here - warmer).toBeLessThan(0.1);
    }),
  );
});

test('a zone breeds when it is choked, or still and out of reach of fish', () => {
  const why = (more: Partial<WaterZone>) => breeding([zone(more)]).zones[0]?.why ?? null;
  expect(why({})).toContain('still water');
  expect(why({ moving: true })).toBeNull();
  expect(why({ fish: true })).toBeNull();
  expect(why({ moving: true, fish: true, choked: true })).toContain('shelter larvae');
});

test('only the zones that breed make the area and the rings, one for each started 100 ft2 of each zone', () => {
  const result = breeding([zone({ areaM2: 100, moving: true }), zone({ areaM2: 5 }), zone({ areaM2: 10, choked: true })]);
  expect(result.breedingAreaM2).toBe(15);
  expect(result.larvicideRings).toBe(1 + 2);
  expect(result.warnings.join()).toContain('licence');
});

test('turnover informs: hours, and turnovers while a brood develops; none without a flow, and that is said', () => {
  const result = breeding([zone({ moving: true })], 10 / 3600);
  expect(result.turnoverHours).toBeCloseTo(1, 12);
  expect(result.turnoversPerBrood).toBeCloseTo((result.developmentDays ?? 0) * 24, 9);
  const still = breeding([zone({})], 0);
  expect([still.turnoverHours, still.turnoversPerBrood]).toEqual([null, null]);
  expect(still.warnings.join()).toContain('Nothing moves the water');
});

test('cold water has no development, and hot or cool water says that its days are extrapolated', () => {
  const at = (celsius: number) => mosquitoBreeding({ celsius, volumeM3: 10, flowM3PerS: 0.003, zones: [zone({ moving: true })] });
  expect([at(5).developmentDays, at(5).intervalDays, at(5).turnoversPerBrood]).toEqual([null, null, null]);
  expect(at(5).warnings.join()).toContain('development stops');
  expect(at(15).warnings.join()).toContain('extrapolated');
  expect(at(36).warnings.join()).toContain('few larvae live');
  expect(at(24).warnings).toHaveLength(1);
});

test('refuse with the place', () => {
  expect(refusals(() => fishLoad({ ...LOAD, fishKg: 0 }))).toEqual(['/fish']);
  expect(refusals(() => fishLoad({ ...LOAD, feedPercentPerDay: 11 }))).toEqual(['/feedPercentPerDay']);
  expect(refusals(() => fishSeason('koi', []))).toEqual(['/periods']);
  expect(refusals(() => fishSeason('koi', [{ label: 'May', celsius: 50 }]))).toEqual(['/periods/0/temperature']);
  expect(refusals(() => mosquitoBreeding({ celsius: 24, volumeM3: 10, flowM3PerS: 0, zones: [zone({ areaM2: 0 })] }))).toEqual(['/zones/0/area']);
});
