// Ohio State University Extension, fact sheet A-2 on pond measurement: acres = shoreline squared / 547,390.
// V: 520 ft of shoreline, "0.4939 acre" (the sheet truncates; own arithmetic 0.493981). An upper bound: for its
// shoreline a circle has the most area, so that a larger figure cannot have been measured.
import { DomainError } from '../../src/domain/errors.js';
import { measureOutline } from '../../src/domain/trade/index.js';

const ACRE_FT2 = 43_560;

function pond(acres: number) {
  return measureOutline({
    shape: 'measured',
    area: { value: acres * ACRE_FT2, unit: 'ft2' },
    perimeter: { value: 520, unit: 'ft' },
  });
}

test('V: takes 0.4939 acre within 520 ft of shoreline', () => {
  expect(pond(0.4939).areaM2 / 0.09290304).toBeCloseTo(0.4939 * ACRE_FT2, 6);
});

test('D: refuses 0.4940 acre, which is more than a circle of that shoreline holds', () => {
  expect(() => pond(0.494)).toThrow(DomainError);
});

test('V: finds 0.2571 acre in a rectangle of 80 x 140 ft', () => {
  const shape = measureOutline({
    shape: 'rectangle',
    length: { value: 140, unit: 'ft' },
    width: { value: 80, unit: 'ft' },
  });
  const acres = shape.areaM2 / 0.09290304 / ACRE_FT2;
  expect(Math.abs(acres - 0.2571)).toBeLessThan(0.0002);
});
