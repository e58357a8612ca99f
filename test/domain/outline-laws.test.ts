import fc from 'fast-check';
import { measureOutline, type Point } from '../../src/domain/trade/index.js';
import { refusals, starPolygon } from './support.js';

const measure = (points: Point[]) => measureOutline({ shape: 'polygon', unit: 'ft', points });

function expectSame(a: Point[], b: Point[]): void {
  const [one, other] = [measure(a), measure(b)];
  expect(Math.abs(one.areaM2 / other.areaM2 - 1)).toBeLessThan(1e-12);
  expect(Math.abs(one.perimeterM / other.perimeterM - 1)).toBeLessThan(1e-12);
}

test('measures a polygon alike from either way round', () => {
  fc.assert(fc.property(starPolygon, (points) => expectSame(points, [...points].reverse())));
});

test('measures a polygon alike from any starting point', () => {
  fc.assert(
    fc.property(starPolygon, fc.nat(), (points, n) => {
      const start = n % points.length;
      expectSame(points, [...points.slice(start), ...points.slice(0, start)]);
    }),
  );
});

test('measures a polygon alike whether its list is closed or open', () => {
  fc.assert(
    fc.property(starPolygon, (points) => {
      const closed = measure([...points, points[0] as Point]);
      expect(closed).toEqual(measure(points));
    }),
  );
});

test('scales the area with the square and the perimeter with the factor', () => {
  fc.assert(
    fc.property(starPolygon, fc.integer({ min: 2, max: 50 }), (points, factor) => {
      const one = measure(points);
      const many = measure(points.map(([x, y]): Point => [x * factor, y * factor]));
      expect(many.areaM2 / one.areaM2).toBeCloseTo(factor * factor, 6);
      expect(many.perimeterM / one.perimeterM).toBeCloseTo(factor, 9);
    }),
  );
});

test('measures feet as it measures the same points in inches', () => {
  fc.assert(
    fc.property(starPolygon, (points) => {
      const inches = points.map(([x, y]): Point => [x * 12, y * 12]);
      const inInches = measureOutline({ shape: 'polygon', unit: 'in', points: inches });
      expect(inInches.areaM2 / measure(points).areaM2).toBeCloseTo(1, 12);
    }),
  );
});

test('never finds more area than a circle of the same perimeter has', () => {
  fc.assert(
    fc.property(starPolygon, (points) => {
      const { areaM2, perimeterM } = measure(points);
      expect(4 * Math.PI * areaM2).toBeLessThan(perimeterM * perimeterM);
    }),
  );
});

test('takes a circle by its own figures, the most area that its perimeter holds', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 1_000, noNaN: true }), (radius) => {
      const area = { value: Math.PI * radius * radius, unit: 'm2' as const };
      const perimeter = { value: 2 * Math.PI * radius, unit: 'm' as const };
      expect(measureOutline({ shape: 'measured', area, perimeter }).areaM2).toBe(area.value);
    }),
  );
});

test('finds a crossing from any starting point and either way round', () => {
  const bowTie: Point[] = [[0, 0], [10, 10], [12, 5], [10, 0], [0, 10], [-2, 5]];
  for (let start = 0; start < bowTie.length; start += 1) {
    const turned = [...bowTie.slice(start), ...bowTie.slice(0, start)];
    expect(refusals(() => measure(turned))).toHaveLength(1);
    expect(refusals(() => measure([...turned].reverse()))).toHaveLength(1);
  }
});

test('refuses a simple polygon once two of its neighbors far apart are swapped', () => {
  fc.assert(
    fc.property(fc.integer({ min: 6, max: 40 }), fc.nat(), (corners, n) => {
      const points = Array.from({ length: corners }, (_, i): Point => {
        return [Math.cos((2 * Math.PI * i) / corners), Math.sin((2 * Math.PI * i) / corners)];
      });
      const at = n % (corners - 1);
      [points[at], points[at + 1]] = [points[at + 1] as Point, points[at] as Point];
      expect(refusals(() => measure(points))[0]).toMatch(/^\/points\/\d+$/);
    }),
  );
});

test('agrees with comparing every pair of edges, on random scribbles', () => {
  const coordinate = fc.integer({ min: 0, max: 12 });
  fc.assert(
    fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 4, maxLength: 9 }), (points) => {
      const distinct = new Set(points.map(String)).size === points.length;
      fc.pre(distinct);
      let refused = false;
      try {
        measure(points);
      } catch {
        refused = true;
      }
      expect(refused).toBe(tangled(points));
    }),
    { numRuns: 500 },
  );
});

test('measures a comb of 2,000 points at any angle, and finds the tooth that is bent into another', () => {
  // Up and down 999 times, 1 on and 60 high, and back 0.1 above that: a strip 0.1 thick over a width of 999.
  const comb = Array.from({ length: 2_000 }, (_, i): Point => (i < 1_000 ? [i, i % 2 === 0 ? 0 : 60] : [1_999 - i, i % 2 === 0 ? 60.1 : 0.1]));
  fc.assert(
    fc.property(fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }), (angle) => {
      const turned = comb.map(([x, y]): Point => [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)]);
      expect(measure(turned).areaM2 / 0.3048 ** 2).toBeCloseTo(99.9, 4);
      const bent = turned.map((point, i): Point => (i === 503 ? (turned[500] as Point) : point));
      expect(refusals(() => measure(bent))).toEqual(['/points/503']);
    }),
    { numRuns: 20 },
  );
});

/** Whether any two edges share a point that is not their common corner, by integer arithmetic on every pair. */
function tangled(points: [number, number][]): boolean {
  const n = points.length;
  const p = (i: number) => points[i % n] as [number, number];
  const side = (a: number[], b: number[], c: number[]) =>
    Math.sign(((b[0] ?? 0) - (a[0] ?? 0)) * ((c[1] ?? 0) - (a[1] ?? 0)) - ((b[1] ?? 0) - (a[1] ?? 0)) * ((c[0] ?? 0) - (a[0] ?? 0)));
  const on = (a: [number, number], b: [number, number], c: [number, number]) =>
    side(a, b, c) === 0 &&
    Math.min(a[0], b[0]) <= c[0] && c[0] <= Math.max(a[0], b[0]) &&
    Math.min(a[1], b[1]) <= c[1] && c[1] <= Math.max(a[1], b[1]);
  for (let i = 0; i < n; i += 1) {
    if (on(p(i), p(i + 1), p(i + 2)) || on(p(i + 1), p(i + 2), p(i))) return true;
    for (let j = i + 2; j < n; j += 1) {
      if (i === 0 && j === n - 1) continue;
      const [a, b, c, d] = [p(i), p(i + 1), p(j), p(j + 1)];
      const proper = side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
      if (proper || on(a, b, c) || on(a, b, d) || on(c, d, a) || on(c, d, b)) return true;
    }
  }
  return false;
}
