// The surveyor's (Gauss, shoelace) area formula, in any surveying text: M, from memory.
// Values D, computed by hand and with Python; each confirmed here with the npm package d3-polygon.
import { polygonArea as d3Area, polygonLength as d3Length } from 'd3-polygon';
import { measureOutline, type Point } from '../../src/domain/trade/index.js';

const twelve = Array.from({ length: 12 }, (_, i): Point => {
  const turn = (i * Math.PI) / 6;
  return [10 * Math.cos(turn), 10 * Math.sin(turn)];
});

const rows: [name: string, points: Point[], area: number, perimeter: number, digits: number][] = [
  ['an L shape', [[0, 0], [20, 0], [20, 8], [12, 8], [12, 14], [0, 14]], 232, 68, 9],
  ['a concave pentagon', [[3, 4], [5, 11], [12, 8], [9, 5], [5, 6]], 30, 26.0900564, 6],
  ['a regular 12-gon of radius 10', twelve, 300, 62.1165708, 6],
];

test.each(rows)('measures %s in feet', (_name, points, area, perimeter, digits) => {
  const shape = measureOutline({ shape: 'polygon', unit: 'ft', points });
  expect(shape.areaM2 / 0.09290304).toBeCloseTo(area, digits);
  expect(shape.perimeterM / 0.3048).toBeCloseTo(perimeter, digits);
});

test.each(rows)('agrees with d3-polygon on %s', (_name, points) => {
  const shape = measureOutline({ shape: 'polygon', unit: 'm', points });
  const pairs = points.map(([x, y]): [number, number] => [x, y]);
  expect(shape.areaM2).toBeCloseTo(Math.abs(d3Area(pairs)), 10);
  expect(shape.perimeterM).toBeCloseTo(d3Length(pairs), 10);
});

test('measures the L shape from two stakes on its bottom edge as from its coordinates', () => {
  const points = rows[0]?.[1] ?? [];
  const distance = ([x, y]: Point, fromX: number) => Math.sqrt((x - fromX) ** 2 + y ** 2);
  const ranges = points.map((point): [number, number] => [distance(point, 0), distance(point, 20)]);
  const shape = measureOutline({ shape: 'two-stake', unit: 'ft', baseline: 20, ranges });
  expect(shape.areaM2 / 0.09290304).toBeCloseTo(232, 6);
  expect(shape.perimeterM / 0.3048).toBeCloseTo(68, 6);
});
