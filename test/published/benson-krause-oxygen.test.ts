/**
 * Dissolved oxygen at saturation, Benson & Krause 1984 as in Standard Methods 4500-O.
 * V: EN 25814 at 760 mmHg, as an instrument manual reproduces it. M: the same as two decimals in USGS tables.
 * D: other pressures and altitudes, from the formula and the standard atmosphere.
 */
import { oxygenCautions, oxygenSaturation, standardPressureMmHg } from '../../src/domain/trade/chemistry/index.js';

const FOOT = 0.3048;
const at = (celsius: number, mmHg = 760) => oxygenSaturation(celsius, mmHg).saturationMgPerL;

it.each([[0, 14.6, 0.05], [10, 11.3, 0.05], [18, 9.47, 0.005], [20, 9.09, 0.005], [22, 8.74, 0.005], [28, 7.83, 0.005], [30, 7.56, 0.005]])('V: at %d degC the standard has %d mg/L', (celsius, table, tolerance) => {
  expect(Math.abs(at(celsius) - table)).toBeLessThanOrEqual(tolerance);
});

it.each([[0, 14.62], [5, 12.77], [10, 11.29], [15, 10.08], [20, 9.09], [25, 8.26], [30, 7.56]])('M: at %d degC the USGS tables have %d mg/L', (celsius, table) => {
  expect(Math.abs(at(celsius) - table)).toBeLessThanOrEqual(0.005);
});

it.each([[0, 700, 13.46], [10, 700, 10.39], [20, 700, 8.36], [30, 700, 6.94], [0, 650, 12.49], [10, 650, 9.64], [20, 650, 7.75], [30, 650, 6.42]])('D: at %d degC and %d mmHg it is %d mg/L', (celsius, mmHg, expected) => {
  expect(Math.abs(at(celsius, mmHg) - expected)).toBeLessThanOrEqual(0.005);
});

it.each([[1000, 732.9, 8.76], [2000, 706.7, 8.44], [5000, 632.4, 7.53]])('D: at %d ft the air has %d mmHg and water of 20 degC holds %d mg/L', (feet, mmHg, mgPerL) => {
  const pressure = standardPressureMmHg(feet * FOOT);
  expect(Math.abs(pressure - mmHg)).toBeLessThanOrEqual(0.05);
  expect(Math.abs(at(20, pressure) - mgPerL)).toBeLessThanOrEqual(0.005);
});

it('V: is not the older instrument table with 9.2 mg/L at 20 degC', () => {
  expect(at(20)).toBeLessThan(9.1);
});

it('V: says above 35 degC, where the approved tables end, that they do (USGS memo QW 99.01)', () => {
  expect(oxygenSaturation(35, 760).warnings).toEqual([]);
  expect(oxygenSaturation(35.1, 760).warnings.join()).toContain('QW 99.01');
});

it.each([[5, ''], [4.9, 'Below the 5 mg/L'], [4, 'distressed'], [2, 'distressed'], [1.9, 'most fish die'], [10.2, '110 %']])('V: takes %d mg/L as University of Florida Extension does (%p)', (measured, says) => {
  expect(oxygenCautions(measured, 9.09).join()).toContain(says);
  if (says === '') expect(oxygenCautions(measured, 9.09)).toEqual([]);
});
