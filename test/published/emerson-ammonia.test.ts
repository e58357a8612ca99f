/**
 * Un-ionized ammonia, Emerson, Russo, Lund & Thurston 1975.
 * V: table and worked example of University of Florida Extension FA-16; Trussell 1972 as a second source. The 32 degC
 * column of the extension table is 4 % high and left out.
 */
import { unionizedAmmonia } from '../../src/domain/trade/chemistry/index.js';

const of = (total: number, pH: number, celsius: number) => unionizedAmmonia(total, 'nitrogen', pH, celsius);

it.each([[7, 20, 0.0039], [8, 10, 0.0182], [8, 20, 0.0381], [8, 24, 0.0502], [8.4, 20, 0.0904]])('V: at pH %d and %d degC the share is %d', (pH, celsius, share) => {
  expect(Math.abs(of(1, pH, celsius).share - share)).toBeLessThanOrEqual(0.0001);
});

it.each([[6, 0.0013], [8, 0.0016], [10, 0.0018], [12, 0.0022], [14, 0.0025], [16, 0.0029], [18, 0.0034], [20, 0.0039], [22, 0.0046], [24, 0.0052], [26, 0.006], [28, 0.0069], [30, 0.008]])('V: at pH 7 and %d degC the table has %d', (celsius, share) => {
  expect(Math.abs(of(1, 7, celsius).share - share)).toBeLessThanOrEqual(0.0001);
});

it.each([[7, 20, 0.00394], [8, 10, 0.01822], [8, 20, 0.03807], [8, 24, 0.05017], [8.4, 20, 0.09043]])('D: at pH %d and %d degC the formula gives %d', (pH, celsius, share) => {
  expect(Math.abs(of(1, pH, celsius).share - share)).toBeLessThanOrEqual(0.000005);
});

it.each([[8, 20, 3.83], [8.5, 20, 11.18]])('V: at pH %d and %d degC Trussell has %d percent', (pH, celsius, percent) => {
  expect(Math.abs((of(1, pH, celsius).share * 100) / percent - 1)).toBeLessThanOrEqual(0.015);
});

it('V: calls 1 mg/L in total at 24 degC and pH 8, which is 0.0502 mg/L un-ionized, harmful', () => {
  const result = of(1, 8, 24);
  expect(Math.abs(result.unionizedMgPerL - 0.0502)).toBeLessThanOrEqual(0.0001);
  expect(result.level).toBe('harmful');
  expect(result.warnings.join()).toContain('0.05 mg/L');
});

it('D: reaches the harmful limit at the total that it names', () => {
  const { totalAtLimitMgPerL } = of(1, 8.2, 17);
  expect(of(totalAtLimitMgPerL, 8.2, 17).unionizedMgPerL).toBeCloseTo(0.05, 12);
});

it('D: counts ammonia by the molecule as 1.2159 times nitrogen', () => {
  expect(unionizedAmmonia(1.2159, 'ammonia', 8, 20).unionizedMgPerL / of(1, 8, 20).unionizedMgPerL).toBeCloseTo(1, 4);
});

it.each([[0.5, 'low'], [1, 'raised'], [3, 'harmful'], [60, 'deadly']])('V from 0.05 mg/L un-ionized, C below: takes %d mg/L in total at pH 8 and 20 degC as %s', (total, level) => {
  expect(of(total, 8, 20).level).toBe(level);
});

it.each([[5.9, 20], [10.1, 20], [8, 30.1]])('says that pH %d and %d degC are outside what the formula is stated for', (pH, celsius) => {
  expect(of(0, pH, celsius).warnings.join()).toContain('extrapolation');
  expect(of(0, 8, 30).warnings).toEqual([]);
});
