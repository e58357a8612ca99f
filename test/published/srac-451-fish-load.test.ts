/** SRAC 451 (1998): about 100 gal of water for each lb of fish, pond culture at 5,000 lb on an acre (V). Feed: a feeding-rate study of channel catfish (V). */
import { convert } from '../../src/domain/quantity/index.js';
import { fishLoad, type FishLoadInput } from '../../src/domain/trade/life/index.js';

const ACRE_FT2 = 43_560;
const base: FishLoadInput = {
  fishKg: convert(20, 'lb', 'kg'),
  volumeM3: convert(2700, 'gal', 'm3'),
  surfaceM2: convert(200, 'ft2', 'm2'),
  feedPercentPerDay: 1,
  proteinPercent: 35,
  aerated: false,
  mediaAreaM2: 9.74,
  nitrificationGPerM2Day: 0.3,
};
const most = (measure: string, input: FishLoadInput) => convert(fishLoad(input).limits.find((limit) => limit.measure === measure)?.mostFishKg ?? 0, 'kg', 'lb');

it('V: 2,700 gal carry 27 lb', () => {
  expect(most('volume', base)).toBeCloseTo(27, 9);
});

it('V: an acre carries 5,000 lb', () => {
  expect(most('surface', { ...base, surfaceM2: convert(ACRE_FT2, 'ft2', 'm2') })).toBeCloseTo(5000, 6);
});

it('V: an acre without aeration takes 30 lb of feed in a day, which 3,000 lb of fish eat at 1 percent', () => {
  expect(most('feed', { ...base, surfaceM2: convert(ACRE_FT2, 'ft2', 'm2') })).toBeCloseTo(3000, 6);
});

it('D: 9.74 m2 of media carry 20 lb, the filter\'s worked case', () => {
  expect(most('filter', base)).toBeCloseTo(20, 1);
});

it('V: that is the 34 kg on a hectare at which oxygen never ran short, and well below the 56 at which fish suffocated', () => {
  const feedKgPerHectare = convert(most('feed', { ...base, surfaceM2: 10_000 }), 'lb', 'kg') * 0.01;
  expect(Math.abs(feedKgPerHectare / 34 - 1)).toBeLessThan(0.02);
});
