/**
 * NIOSH 94-110 (rev. 9/2021), revised lifting equation. V: the SI solution; Tables 1 to 4 in a lifting-analysis worksheet;
 * Table 5 in a public transcription, its upper column in a second one and its first rows in the worksheet; Table 7 in a
 * university lecture (fair) and the transcription (poor). M: Example 1 of the manual, whose printed multipliers are
 * rounded, hence 3 %. The others are D.
 */
import { convert } from '../../src/domain/quantity/index.js';
import { COUPLINGS, LIFT_DURATIONS, liftCheck, type HandPosition, type LiftInput } from '../../src/domain/trade/safety/index.js';

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

const IDEAL: LiftInput = { loadKg: 10, start: at(10, 30), end: at(10, 30), liftsPerMinute: 0.2, duration: 'up-to-1-h', coupling: 'good' };
/** The multiplier at the start of a lift that is ideal but for one thing. */
const multiplier = (change: Partial<LiftInput>): number => pounds(liftCheck({ ...IDEAL, ...change }).startLimitKg) / 51;

it.each([[10, 1], [11, 0.91], [12, 0.83], [13, 0.77], [14, 0.71], [15, 0.67], [16, 0.63], [17, 0.59], [18, 0.56], [19, 0.53], [20, 0.5], [21, 0.48], [22, 0.46], [23, 0.44], [24, 0.42], [25, 0.4], [25.1, 0]])('V, Table 1: hands %d in away, HM %d', (reach, expected) => {
  expect(Math.abs(multiplier({ start: at(reach, 30) }) - expected)).toBeLessThanOrEqual(0.0056);
});

it.each([[0, 0.78], [5, 0.81], [10, 0.85], [15, 0.89], [20, 0.93], [25, 0.96], [30, 1], [35, 0.96], [40, 0.93], [45, 0.89], [50, 0.85], [55, 0.81], [60, 0.78], [65, 0.74], [70, 0.7], [70.1, 0]])('V, Table 2: hands %d in high, VM %d', (height, expected) => {
  expect(Math.abs(multiplier({ start: at(10, height), end: at(10, height) }) - expected)).toBeLessThanOrEqual(0.0051);
});

it.each([[10, 1], [15, 0.94], [20, 0.91], [25, 0.89], [30, 0.88], [35, 0.87], [40, 0.87], [45, 0.86], [50, 0.86], [60, 0.85], [70, 0.85]])('V, Table 3: %d in of travel, DM %d', (travel, expected) => {
  const low = 1 - 0.0075 * 30;
  expect(Math.abs(multiplier({ start: at(10, 0), end: at(10, travel) }) / low - expected)).toBeLessThanOrEqual(0.0051);
});

it.each([[0, 1], [15, 0.95], [30, 0.9], [45, 0.86], [60, 0.81], [75, 0.76], [90, 0.71], [105, 0.66], [120, 0.62], [135, 0.57], [136, 0]])('V, Table 4: turned %d degrees, AM %d', (turnDegrees, expected) => {
  expect(Math.abs(multiplier({ start: { ...at(10, 30), turnDegrees } }) - expected)).toBeLessThanOrEqual(0.0051);
});

it.each([
  [0.2, [1, 0.95, 0.85], [1, 0.95, 0.85]],
  [0.5, [0.97, 0.92, 0.81], [0.97, 0.92, 0.81]],
  [1, [0.94, 0.88, 0.75], [0.94, 0.88, 0.75]],
  [2, [0.91, 0.84, 0.65], [0.91, 0.84, 0.65]],
  [3, [0.88, 0.79, 0.55], [0.88, 0.79, 0.55]],
  [4, [0.84, 0.72, 0.45], [0.84, 0.72, 0.45]],
  [5, [0.8, 0.6, 0.35], [0.8, 0.6, 0.35]],
  [6, [0.75, 0.5, 0.27], [0.75, 0.5, 0.27]],
  [7, [0.7, 0.42, 0.22], [0.7, 0.42, 0.22]],
  [8, [0.6, 0.35, 0.18], [0.6, 0.35, 0.18]],
  [9, [0.52, 0.3, 0], [0.52, 0.3, 0.15]],
  [10, [0.45, 0.26, 0], [0.45, 0.26, 0.13]],
  [11, [0.41, 0, 0], [0.41, 0.23, 0]],
  [12, [0.37, 0, 0], [0.37, 0.21, 0]],
  [13, [0, 0, 0], [0.34, 0, 0]],
  [14, [0, 0, 0], [0.31, 0, 0]],
  [15, [0, 0, 0], [0.28, 0, 0]],
  [15.1, [0, 0, 0], [0, 0, 0]],
])('V, Table 5: %d lifts a minute, FM %p with the hands below 30 in and %p from there', (liftsPerMinute, low, high) => {
  const rates = (height: number) => LIFT_DURATIONS.map((duration) => multiplier({ liftsPerMinute, duration, start: at(10, height), end: at(10, height) }) / (1 - 0.0075 * (30 - height)));
  low.forEach((expected, i) => expect(rates(20)[i]).toBeCloseTo(expected, 9));
  high.forEach((expected, i) => expect(rates(30)[i]).toBeCloseTo(expected, 9));
});

it('V, Table 7: a fair hold costs 5 % with the hands below 30 in, a poor one 10 % anywhere', () => {
  const holds = (height: number) => COUPLINGS.map((coupling) => multiplier({ coupling, start: at(10, height), end: at(10, height) }) / (1 - 0.0075 * (30 - height)));
  [1, 0.95, 0.9].forEach((expected, i) => expect(holds(20)[i]).toBeCloseTo(expected, 9));
  [1, 1, 0.9].forEach((expected, i) => expect(holds(30)[i]).toBeCloseTo(expected, 9));
});
