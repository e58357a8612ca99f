/**
 * Timmons & Ebeling, Recirculating Aquaculture: the factor 0.092 is from memory (M). Setting of the worked case: Losordo &
 * DeLong, flow-rate note (V). Results derived (D).
 */
import { convert, fromSi } from '../../src/domain/quantity/index.js';
import { ammoniaFromFeed, biologicalFilter, checkFlowLimits, PER_GRAM_NITRIFIED } from '../../src/domain/trade/filtration/index.js';

const GARDEN = { proteinPercent: 35, nitrificationGPerM2Day: 0.3, specificSurfaceM2PerM3: 200, ammoniaLimitMgPerL: 1, removalPercent: 50 };

it('D: 60 kg of feed with 40 percent protein give 2.208 kg of ammonia nitrogen, which takes 3,067 L/min', () => {
  expect(ammoniaFromFeed(60, 40)).toBeCloseTo(2208, 9);
  const { flowM3PerS } = biologicalFilter({ ...GARDEN, feedKgPerDay: 60, proteinPercent: 40 });
  expect(Math.abs(fromSi(flowM3PerS, 'L/min') - 3067)).toBeLessThan(0.5);
});

it('D: 20 lb of fish on 1 percent take 9.74 m2 of media, 48.7 L or 1.72 ft3', () => {
  const feedKgPerDay = convert(20, 'lb', 'kg') * 0.01;
  expect(feedKgPerDay).toBeCloseTo(0.0907, 4);
  const filter = biologicalFilter({ ...GARDEN, feedKgPerDay });
  expect(Math.abs(filter.ammoniaGPerDay - 2.92)).toBeLessThan(0.005);
  expect(Math.abs(filter.mediaAreaM2 - 9.74)).toBeLessThan(0.005);
  expect(Math.abs(filter.mediaVolumeM3 * 1000 - 48.7)).toBeLessThan(0.05);
  expect(Math.abs(fromSi(filter.mediaVolumeM3, 'ft3') - 1.72)).toBeLessThan(0.005);
});

it('D: 1 kg of feed with 35 percent takes up to 386 g of bicarbonate', () => {
  expect(Math.abs(biologicalFilter({ ...GARDEN, feedKgPerDay: 1 }).bicarbonateGPerDay - 386)).toBeLessThan(0.5);
});

it('V: 1 g of nitrogen takes 7.14 g of alkalinity, 4.18 g of oxygen and 12 g of bicarbonate, D: 11.995', () => {
  expect(PER_GRAM_NITRIFIED.alkalinityAsCaCO3).toBe(7.14);
  const { ammoniaGPerDay, oxygenGPerDay } = biologicalFilter({ ...GARDEN, feedKgPerDay: 0.1 });
  expect(oxygenGPerDay / ammoniaGPerDay).toBeCloseTo(4.18, 12);
  expect(PER_GRAM_NITRIFIED.sodiumBicarbonate).toBeCloseTo(11.995, 3);
});

it('C: 2,700 gal at 3,000 gph turn over in 54 minutes', () => {
  const { turnoverHours } = checkFlowLimits(convert(3000, 'gph', 'm3/h') / 3600, convert(2700, 'gal', 'm3'), []);
  expect(turnoverHours * 60).toBeCloseTo(54, 9);
});
