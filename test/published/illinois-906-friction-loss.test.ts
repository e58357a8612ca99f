/**
 * Illinois Administrative Code, Title 77, Part 906, App. A, Exhibit I: friction loss in Schedule 40 plastic pipe,
 * C = 150, in ft of head for 100 ft of pipe. Evidence V: all rows were read. Inner diameters: 2018 IRC App. A, V.
 */
import { convert } from '../../src/domain/quantity/index.js';
import { darcyWeisbachGradient, HAZEN_WILLIAMS_EXPONENT, hazenWilliamsResistance, waterViscosity } from '../../src/domain/trade/hydraulics/index.js';

const metres = (inches: number): number => convert(inches, 'in', 'm');
const flowOf = (gpm: number): number => convert(gpm, 'gpm', 'm3/h') / 3600;

const ROWS = [
  [1.049, 5, 1.52],
  [1.38, 10, 1.46],
  [1.61, 10, 0.7],
  [1.61, 30, 5.22],
  [2.067, 20, 0.74],
  [2.067, 30, 1.54],
  [2.067, 50, 3.98],
  [3.068, 100, 2.09],
  [4.026, 100, 0.55],
] as const;

it.each(ROWS)('Hazen-Williams in %d in at %d gpm loses %d ft for 100 ft', (inches, gpm, table) => {
  const loss = 100 * hazenWilliamsResistance(metres(inches), 150) * flowOf(gpm) ** HAZEN_WILLIAMS_EXPONENT;
  expect(Math.abs(loss - table)).toBeLessThan(table < 0.6 ? 0.02 : table >= 1.4 ? 0.01 * table : 0.03 * table);
});

it('loses 2.634 m for 100 m at 40 gpm in 52.50 mm (D: derived)', () => {
  expect(100 * hazenWilliamsResistance(0.0525, 150) * flowOf(40) ** HAZEN_WILLIAMS_EXPONENT).toBeCloseTo(2.634, 3);
});

/** D: derived with Darcy-Weisbach, ε 5e-6 ft, and 1.217e-5 ft2/s at 60 °F (water-treatment textbook, Table C-2, V). */
it.each([[1.049, 5, 1.761], [1.38, 10, 1.61], [1.61, 10, 0.773], [1.61, 30, 5.395], [2.067, 20, 0.796], [2.067, 30, 1.632], [2.067, 50, 4.056], [3.068, 100, 2.111], [4.026, 100, 0.574]])('Darcy-Weisbach in %d in at %d gpm loses %d ft for 100 ft', (inches, gpm, expected) => {
  const loss = 100 * darcyWeisbachGradient(flowOf(gpm), metres(inches), 5e-6 * 0.3048, 1.217e-5 * 0.3048 ** 2);
  expect(Math.abs(loss / expected - 1)).toBeLessThan(0.003);
});

/** D: 2 in at 40 gpm; the temperature that Hazen-Williams does not know. Our viscosity lies between rows of 5 °C. */
it.each([[40, 2.918], [60, 2.723], [80, 2.569]])('at %d degF 40 gpm in 2 in lose %d ft for 100 ft', (fahrenheit, expected) => {
  const loss = 100 * darcyWeisbachGradient(flowOf(40), metres(2.067), 5e-6 * 0.3048, waterViscosity((fahrenheit - 32) / 1.8));
  expect(Math.abs(loss / expected - 1)).toBeLessThan(0.004);
});
