// Ramanujan 1914, "Modular equations and approximations to pi", Quart. J. Math. 45, second formula: M, from memory.
// Exact perimeters 4 a E(m), m = 1 - (b/a)^2: D, from scipy's ellipe, and the same from the arithmetic-geometric mean.
import { measureOutline } from '../../src/domain/trade/index.js';

function perimeter(a: number, b: number): number {
  return measureOutline({
    shape: 'ellipse',
    length: { value: 2 * a, unit: 'm' },
    width: { value: 2 * b, unit: 'm' },
  }).perimeterM;
}

function exactPerimeter(a: number, b: number): number {
  let [x, y] = [a, b];
  let correction = (a * a + b * b) / 2;
  for (let weight = 0.25; Math.abs(x - y) > 1e-15 * a; weight *= 2) {
    correction -= weight * (x - y) ** 2;
    [x, y] = [(x + y) / 2, Math.sqrt(x * y)];
  }
  return (4 * correction * Math.PI) / (x + y);
}

test.each([
  [10, 5, 48.44224108065],
  [12, 4, 53.459571119307],
  [10, 1, 40.639272100189],
])('D: gives the digits of the formula for semi-axes %d and %d', (a, b, formula) => {
  expect(perimeter(a, b)).toBeCloseTo(formula, 10);
});

test.each([
  [10, 5, 48.442241102738, 4.7e-10],
  [12, 4, 53.459572882221, 3.4e-8],
  [10, 1, 40.639741801009, 1.2e-5],
])('D: stays within its error of the exact perimeter for semi-axes %d and %d', (a, b, exact, error) => {
  expect(Math.abs(perimeter(a, b) / exact - 1)).toBeLessThan(error);
  expect(Math.abs(exactPerimeter(a, b) / exact - 1)).toBeLessThan(1e-12);
});

test('D: is short by 4.0e-4 at worst, for an ellipse that has gone flat', () => {
  expect(perimeter(5_000, 0.0005) / 5_000).toBeCloseTo(3.99839, 5);
});

test('D: a circle has the perimeter and area of a circle', () => {
  expect(perimeter(3, 3)).toBeCloseTo(6 * Math.PI, 12);
});

test('D: takes full axes, so that 24 x 16 ft covers 96 pi square feet', () => {
  const shape = measureOutline({
    shape: 'ellipse',
    length: { value: 24, unit: 'ft' },
    width: { value: 16, unit: 'ft' },
  });
  expect(shape.areaM2 / 0.09290304).toBeCloseTo(96 * Math.PI, 9);
});
