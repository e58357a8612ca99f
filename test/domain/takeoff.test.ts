import fc from 'fast-check';
import {
  isTakeoffQuantity,
  takeoff,
  TAKEOFF_QUANTITIES,
  takeoffDisplayUnit,
  takeoffKind,
  takeoffSiUnit,
  takeoffValue,
  type Outline,
  type Point,
  type ProbeReading,
} from '../../src/domain/trade/index.js';
import { kindOf } from '../../src/domain/quantity/index.js';

const ellipse: Outline = { shape: 'ellipse', length: { value: 24, unit: 'ft' }, width: { value: 16, unit: 'ft' } };
const probes = { unit: 'in' as const, readings: [{ toSediment: 18, toBottom: 27 }, { toSediment: 20, toBottom: 30 }] };

test('gives area and perimeter but no depths without probe readings', () => {
  const result = takeoff({ outline: ellipse, probes: null });
  const known = TAKEOFF_QUANTITIES.filter((name) => takeoffValue(result, name, takeoffSiUnit(name)) !== null);
  expect(known).toEqual(['surfaceArea', 'perimeter']);
});

test.each(TAKEOFF_QUANTITIES)('gives %s with a working that ends in its value and unit', (name) => {
  const result = takeoff({ outline: ellipse, probes });
  for (const unit of [takeoffSiUnit(name), takeoffDisplayUnit(name, 'us'), takeoffDisplayUnit(name, 'metric')]) {
    const value = takeoffValue(result, name, unit);
    const last = value?.working.steps.at(-1);
    expect(last?.unit).toBe(unit);
    expect(Number(last?.value)).toBe(value?.value);
    expect(kindOf(unit)).toBe(takeoffKind(name));
  }
});

test('works in plain decimals that JSON and a calculator take as they are', () => {
  const { workings } = takeoff({ outline: ellipse, probes });
  const values = Object.values(workings).flatMap(({ inputs, steps }) => [...inputs, ...steps].map(({ value }) => value));
  expect(values.length).toBeGreaterThan(25);
  expect(values.filter((value) => !/^-?\d+(\.\d+)?$/.test(value))).toEqual([]);
});

test('lists up to sixty points and readings in the working, and counts longer lists', () => {
  const circle = (n: number): Outline => ({
    shape: 'polygon',
    unit: 'ft',
    points: Array.from({ length: n }, (_, i): Point => [Math.cos((2 * Math.PI * i) / n), Math.sin((2 * Math.PI * i) / n)]),
  });
  const listed = takeoff({ outline: circle(60), probes: null }).workings.surfaceArea;
  const counted = takeoff({ outline: circle(61), probes: null }).workings.surfaceArea;
  expect(listed?.inputs[0]?.value).toContain('(1, 0)');
  expect(counted?.inputs[0]?.value).toBe('61 points of the outline');
});

test('refuses to give sediment in feet', () => {
  expect(() => takeoffValue(takeoff({ outline: ellipse, probes }), 'sedimentVolume', 'ft')).toThrow('unit of volume');
});

test('knows its quantities by name and no others', () => {
  expect(isTakeoffQuantity('sedimentVolume')).toBe(true);
  expect(isTakeoffQuantity('linerArea')).toBe(false);
  expect(isTakeoffQuantity('constructor')).toBe(false);
});

test('gives the same volumes from the same survey taken in other units', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.nat(60), fc.nat(30)), { minLength: 1, maxLength: 30 }), (pairs) => {
      const inches = pairs.map(([top, layer]): ProbeReading => ({ toSediment: top, toBottom: top + layer }));
      const cm = inches.map(({ toSediment, toBottom }) => ({ toSediment: toSediment * 2.54, toBottom: toBottom * 2.54 }));
      const us = takeoff({ outline: ellipse, probes: { unit: 'in', readings: inches } });
      const metric = takeoff({ outline: ellipse, probes: { unit: 'cm', readings: cm } });
      expect(metric.sedimentVolumeM3).toBeCloseTo(us.sedimentVolumeM3 ?? NaN, 9);
      expect(metric.waterVolumeM3).toBeCloseTo(us.waterVolumeM3 ?? NaN, 9);
    }),
  );
});

test('keeps the greatest depth at or below the mean, and the sediment at or above nothing', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.nat(60), fc.nat(30)), { minLength: 1, maxLength: 30 }), (pairs) => {
      const readings = pairs.map(([top, layer]): ProbeReading => ({ toSediment: top, toBottom: top + layer }));
      const result = takeoff({ outline: ellipse, probes: { unit: 'in', readings } });
      expect(result.maxDepthM ?? NaN).toBeGreaterThanOrEqual((result.meanDepthM ?? NaN) * (1 - 1e-15));
      expect(result.sedimentVolumeM3 ?? NaN).toBeGreaterThanOrEqual(0);
    }),
  );
});
