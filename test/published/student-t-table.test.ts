/**
 * Upper 5 % points of Student's t, as printed in the tables of any statistics text, such as the NIST/SEMATECH
 * e-Handbook of Statistical Methods, 1.3.6.7.2. Evidence M: from memory, three decimals.
 */
import { studentT95 } from '../../src/domain/statistics/index.js';

it.each([[1, 6.314], [2, 2.92], [3, 2.353], [4, 2.132], [5, 2.015], [10, 1.812], [20, 1.725], [29, 1.699], [30, 1.697], [60, 1.671], [120, 1.658]])('with %d degrees of freedom t is %d', (degrees, t) => {
  expect(Math.abs(studentT95(degrees) - t)).toBeLessThan(0.0006);
});

it('falls with every degree of freedom, where the sums give way to the expansion too', () => {
  for (let degrees = 1; degrees < 200; degrees += 1) expect(studentT95(degrees + 1)).toBeLessThan(studentT95(degrees));
});

it('has no value below one degree of freedom', () => {
  expect(() => studentT95(0)).toThrow(RangeError);
});
