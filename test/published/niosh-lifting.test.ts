/**
 * NIOSH 94-110 (rev. 9/2021), revised lifting equation. The SI solution was read (V); Example 1 of the manual is from memory
 * (M), its printed multipliers are rounded, hence 3 %; the others are D. Frequency and coupling tables are M.
 */
import { convert } from '../../src/domain/quantity/index.js';
import { liftCheck, type HandPosition } from '../../src/domain/trade/safety/index.js';

const at = (reachIn: number, heightIn: number): HandPosition => ({ reachM: convert(reachIn, 'in', 'm'), heightM: convert(heightIn, 'in', 'm'), turnDegrees: 0 });
const pounds = (kg: number): number => convert(kg, 'kg', 'lb');

it('loading press stock, Example 1: 16.3 lb at the start and 14.5 lb at the end, index 3.0 (M)', () => {
  const { startLimitKg, endLimitKg, liftingIndex } = liftCheck({ loadKg: convert(44, 'lb', 'kg'), start: at(23, 15), end: at(23, 64), liftsPerMinute: 0.2, duration: 'up-to-1-h', coupling: 'fair' });
  expect(Math.abs(pounds(startLimitKg) / 16.3 - 1)).toBeLessThan(0.03);
  expect(Math.abs(pounds(endLimitKg) / 14.5 - 1)).toBeLessThan(0.03);
  expect(pounds(startLimitKg)).toBeCloseTo(16.02, 2);
  expect(pounds(endLimitKg)).toBeCloseTo(14.15, 2);
  expect(Math.abs((liftingIndex ?? 0) / 3 - 1)).toBeLessThan(0.04);
});

it('the solution printed in SI: 15.7 kg (V)', () => {
  const { startLimitKg } = liftCheck({ loadKg: 15, start: { reachM: 0.25, heightM: 0.55, turnDegrees: 0 }, end: { reachM: 0.25, heightM: 1.5, turnDegrees: 0 }, liftsPerMinute: 3, duration: 'up-to-1-h', coupling: 'fair' });
  expect(Math.abs(startLimitKg / 15.72 - 1)).toBeLessThan(0.005);
});

it('the ideal lift: 51 lb (D)', () => {
  const { startLimitKg } = liftCheck({ loadKg: 10, start: at(10, 30), end: at(10, 40), liftsPerMinute: 0.1, duration: 'up-to-1-h', coupling: 'good' });
  expect(pounds(startLimitKg)).toBeCloseTo(51, 9);
});

it('from the floor at 15 in with a fair hold, over 30 in: 22.0 lb (D)', () => {
  const { startLimitKg } = liftCheck({ loadKg: 10, start: at(15, 0), end: at(15, 30), liftsPerMinute: 0.2, duration: 'up-to-1-h', coupling: 'fair' });
  expect(pounds(startLimitKg)).toBeCloseTo(22, 1);
});
