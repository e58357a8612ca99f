/**
 * USBR Water Measurement Manual, 3rd ed., ch. 7: Francis and Kindsvater-Carter. Coefficients V (EPA SWMM Reference
 * Manual, Table 6-2, which cites it), the correction of the crest M; the flows are D, derived from the formulas.
 */
import { weirFlow, type WeirInput } from '../../src/domain/trade/weir/index.js';

const FEET: WeirInput = { kind: 'suppressed', headM: 0.25 * 0.3048, crestM: 0.3048, channelM: 0.3048, crestHeightM: 0.5 * 0.3048, downstreamHeadM: 0 };
const cubicFeet = (change: Partial<WeirInput>): number => weirFlow({ ...FEET, ...change }).flowM3PerS / 0.3048 ** 3;

it.each([[0.2, 0.2978], [0.25, 0.4163], [0.3, 0.5472], [0.4, 0.8424], [0.5, 1.1773], [1, 3.33]])('Francis over 1 ft at %d ft of head gives %d ft3/s', (head, expected) => {
  expect(cubicFeet({ headM: head * 0.3048 })).toBeCloseTo(expected, 3);
});

it.each([[0.2, 0.046], [0.5, 0.4463], [1, 2.49]])('Cone at %d ft gives %d ft3/s', (head, expected) => {
  expect(cubicFeet({ kind: 'v-notch-90', headM: head * 0.3048 })).toBeCloseTo(expected, 3);
});

it('Kindsvater-Carter over 1 ft in a channel of 1 ft, crest 0.5 ft high, at 0.25 ft gives 0.4339 ft3/s', () => {
  expect(cubicFeet({ kind: 'kindsvater-carter' })).toBeCloseTo(0.4339, 4);
});

it('Kindsvater-Carter over a lip of 2 ft, 0.25 ft high, at 0.1 ft gives 0.2231 ft3/s, and says that the head is too small', () => {
  const lip: Partial<WeirInput> = { kind: 'kindsvater-carter', headM: 0.1 * 0.3048, crestM: 2 * 0.3048, channelM: 2 * 0.3048, crestHeightM: 0.25 * 0.3048 };
  expect(cubicFeet(lip)).toBeCloseTo(0.2231, 4);
  expect(weirFlow({ ...FEET, ...lip }).warnings.join()).toMatch(/under 0\.2 ft/);
});

/** Villemonte (V: EPA SWMM Reference Manual, vol. II); the figure is D. */
it('a weir drowned to half its head gives [1 − 0.5^1.5]^0.385 of its free flow', () => {
  expect(cubicFeet({ downstreamHeadM: 0.125 * 0.3048 }) / cubicFeet({})).toBeCloseTo((1 - 0.5 ** 1.5) ** 0.385, 12);
});
