import fc from 'fast-check';
import { measureOutline, type Point, type PolygonOutline, type Probes } from '../../src/domain/trade/index.js';
import { sedimentByEdge, sedimentByPlace, type EdgeRule } from '../../src/domain/trade/sediment/index.js';
import { refusals, starPolygon } from './support.js';

const ZERO: EdgeRule = { kind: 'zero' };
const NEAREST: EdgeRule = { kind: 'nearest' };
const polygon = (points: readonly Point[]): PolygonOutline => ({ shape: 'polygon', unit: 'm', points });
const SQUARE: Point[] = [[0, 0], [10, 0], [10, 10], [0, 10]];
const at = (x: number, y: number, toSediment = 0.5, toBottom = 0.8) => ({ at: [x, y] as Point, toSediment, toBottom });
const metres = (...readings: Probes['readings']): Probes => ({ unit: 'm', readings });

/** Polygons with readings strewn over and around them; the first one lies at the center, inside. */
const pond = fc.tuple(starPolygon, fc.array(fc.record({ across: fc.double({ min: -1, max: 1, noNaN: true }), up: fc.double({ min: -1, max: 1, noNaN: true }), top: fc.integer({ min: 0, max: 100 }), layer: fc.integer({ min: 0, max: 100 }) }), { maxLength: 30 })).map(([points, strewn]) => {
  const [cx, cy] = centerOf(points);
  return { points, probes: metres(at(cx, cy), ...strewn.map(({ across, up, top, layer }) => at(cx + 20 * across, cy + 20 * up, top / 100, (top + layer) / 100))) };
});

/** The center that the rays of a star polygon start from: its first two points and their turns give it. */
function centerOf(points: readonly Point[]): Point {
  // Ray 0 points along x, so the center has the height of the first point; ray 1 then gives how far left it lies.
  const [a, b] = [points[0] as Point, points[1] as Point];
  const turn = (2 * Math.PI) / points.length;
  return [b[0] - (b[1] - a[1]) / Math.tan(turn), a[1]];
}

test('covers every outline to the last digits, and no land', () => {
  fc.assert(
    fc.property(pond, ({ points, probes }) => {
      const result = sedimentByPlace(polygon(points), probes, NEAREST);
      expect(result.triangulated.areaM2 / measureOutline(polygon(points)).areaM2).toBeCloseTo(1, 6);
      expect(result.warnings.filter((warning) => warning.includes('too thin'))).toEqual([]);
    }),
  );
});

test('lies between area × thinnest and area × thickest reading when the edge goes by the nearest', () => {
  fc.assert(
    fc.property(pond, ({ points, probes }) => {
      const { triangulated, areaM2 } = sedimentByPlace(polygon(points), probes, NEAREST);
      const layers = probes.readings.map(({ toSediment, toBottom }) => toBottom - toSediment);
      expect(triangulated.sedimentM3).toBeGreaterThan(areaM2 * Math.min(...layers) - 1e-5 * areaM2);
      expect(triangulated.sedimentM3).toBeLessThan(areaM2 * Math.max(...layers) + 1e-5 * areaM2);
    }),
  );
});

test('finds no more sediment with an edge of zero than with a given edge, and more with a thicker one', () => {
  fc.assert(
    fc.property(pond, fc.double({ min: 0.01, max: 1, noNaN: true }), ({ points, probes }, thicknessM) => {
      const volume = (edge: EdgeRule): number => sedimentByPlace(polygon(points), probes, edge).triangulated.sedimentM3;
      const given = (share: number): EdgeRule => ({ kind: 'given', thicknessM: share * thicknessM, depthM: 2 });
      expect(volume(ZERO)).toBeCloseTo(volume(given(0)), 9);
      expect(volume(given(0.5))).toBeGreaterThan(volume(ZERO));
      expect(volume(given(1)) - volume(given(0.5))).toBeCloseTo(volume(given(0.5)) - volume(ZERO), 6);
    }),
  );
});

test('scales with the square of the lengths and with the depths, and turns with the pond', () => {
  const points: Point[] = [[0, 0], [20, 0], [20, 8], [12, 8], [12, 14], [0, 14]];
  const strewn = [at(3.1, 2.7, 0.4, 0.9), at(15.3, 4.4, 0.6, 0.8), at(5.2, 11.6, 0.3, 0.35), at(8.9, 6.1, 0.5, 0.95)];
  const volume = (shape: readonly Point[], probes: Probes): number => sedimentByPlace(polygon(shape), probes, ZERO).triangulated.sedimentM3;
  const moved = (move: (point: Point) => Point, deeper = 1): number =>
    volume(points.map(move), metres(...strewn.map((one) => ({ at: move(one.at), toSediment: deeper * one.toSediment, toBottom: deeper * one.toBottom }))));
  const plain = volume(points, metres(...strewn));
  expect(moved(([x, y]) => [3 * x, 3 * y])).toBeCloseTo(9 * plain, 8);
  expect(moved((point) => point, 2)).toBeCloseTo(2 * plain, 9);
  expect(moved(([x, y]) => [5000 - y, x - 3000])).toBeCloseTo(plain, 6);
  expect(volume([...points.slice(2), ...points.slice(0, 2)].reverse(), metres(...strewn))).toBeCloseTo(plain, 9);
  expect(volume([...points, [0, 0]], metres(...strewn))).toBeCloseTo(plain, 9);
  expect(volume(points, metres(...[...strewn].reverse()))).toBeCloseTo(plain, 9);
});

test('gives the same for a grid of readings wherever the lists begin and whichever way round they go', () => {
  const points: Point[] = [[0, 0], [20, 0], [20, 8], [12, 8], [12, 14], [0, 14]];
  const grid = points.flatMap((_, i) => [1, 3, 5, 7].map((j) => at(2 * i + 1, j, 0, ((7 * i + 3 * j) % 10) / 10)));
  const first = sedimentByPlace(polygon(points), metres(...grid), ZERO).triangulated.sedimentM3;
  fc.assert(
    fc.property(fc.nat({ max: 5 }), fc.nat({ max: 23 }), fc.boolean(), (start, from, back) => {
      const turned = [...points.slice(start), ...points.slice(0, start)];
      const result = sedimentByPlace(polygon(back ? turned.reverse() : turned), metres(...grid.slice(from), ...grid.slice(0, from)), ZERO);
      expect(result.triangulated.sedimentM3).toBeCloseTo(first, 9);
    }),
  );
});

test('says when a bay has no reading', () => {
  const points: Point[] = [[0, 0], [10, 0], [10, 4], [30, 4], [30, 6], [10, 6], [10, 10], [0, 10]];
  const { warnings } = sedimentByPlace(polygon(points), metres(at(3, 3), at(7, 7), at(3, 7), at(7, 3)), NEAREST);
  expect(warnings.join(' ')).toContain('take readings there');
});

test('reads feet and inches as it reads meters', () => {
  const inFeet = sedimentByPlace({ shape: 'polygon', unit: 'ft', points: SQUARE }, { unit: 'in', readings: [at(5, 5, 10, 19), at(2, 3, 5, 9)] }, ZERO);
  const f = 0.3048;
  const inMetres = sedimentByPlace(polygon(SQUARE.map(([x, y]) => [x * f, y * f])), metres(at(5 * f, 5 * f, 0.254, 0.4826), at(2 * f, 3 * f, 0.127, 0.2286)), ZERO);
  expect(inFeet.triangulated.sedimentM3).toBeCloseTo(inMetres.triangulated.sedimentM3, 12);
  expect(inFeet.error?.standardErrorM3).toBeCloseTo(inMetres.error?.standardErrorM3 ?? NaN, 12);
});

test('goes evenly along the shore from one reading on it to the next', () => {
  const shore = [at(0, 0, 0, 0.2), at(10, 0, 0, 0.4), at(10, 10, 0, 0.4), at(0, 10, 0, 0.2)];
  const { triangulated } = sedimentByPlace(polygon(SQUARE), metres(...shore, at(5, 5, 0, 0.3)), { kind: 'shore-readings' });
  expect(triangulated.sedimentM3).toBeCloseTo(30, 9);
  const uneven = sedimentByPlace(polygon(SQUARE), metres(at(10.03, 5, 0, 0.6)), { kind: 'shore-readings' });
  expect(uneven.triangulated.sedimentM3).toBeCloseTo(60, 9);
});

test('says what it leaves out, and counts it in the mean', () => {
  const { warnings, mean, places } = sedimentByPlace(polygon(SQUARE), metres(at(5, 5), at(11, 5), at(5, 5), { toSediment: 0.5, toBottom: 0.8 }), NEAREST);
  expect(warnings.join(' ')).toMatch(/outside the outline, counted from 0: 1\..*1 readings have no place.*1 readings share/);
  expect(places).toBe(1);
  expect(mean.sedimentM3).toBeCloseTo(30, 9);
});

test('takes the mean of readings at one place', () => {
  const { triangulated } = sedimentByPlace(polygon(SQUARE), metres(at(5, 5, 0, 0.2), at(5, 5, 0, 0.3), at(5, 5, 0, 0.7)), NEAREST);
  expect(triangulated.sedimentM3).toBeCloseTo(40, 9);
});

test('asks for as many more readings as bring the interval within 15 %', () => {
  const few = metres(...[0.1, 0.3, 0.5, 0.2].map((layer, i) => at(2 + 2 * i, 5, 0, layer)));
  const { error, warnings } = sedimentByPlace(polygon(SQUARE), few, NEAREST);
  // Mean 0.275, deviation 0.170783: half width 2.353363 × 0.170783 / 2 / 0.275 of the volume.
  expect(error?.halfWidthShare).toBeCloseTo(0.730754, 5);
  expect(error?.standardErrorM3).toBeCloseTo(8.539126, 5);
  // 49 readings: 1.677224 × 0.621028 / 7 = 0.148798; 48 give 0.150401.
  expect(error?.extraReadings).toBe(45);
  expect(warnings.join(' ')).toContain('about 45 more readings');
});

test('asks for none when the readings agree, and cannot tell from one', () => {
  const even = sedimentByPlace(polygon(SQUARE), metres(at(3, 3), at(6, 6), at(3, 7)), NEAREST);
  expect(even.error).toMatchObject({ extraReadings: 0 });
  expect(even.warnings).toEqual([]);
  const one = sedimentByPlace(polygon(SQUARE), metres(at(3, 3)), NEAREST);
  expect(one.error).toBeNull();
  expect(one.warnings.join(' ')).toContain('single reading');
});

test('gives every edge that needs no further figure, and nothing where nothing can be placed', () => {
  const inside = metres(at(3, 3), at(7, 7, 0.2, 0.6));
  expect(sedimentByEdge(polygon(SQUARE), inside)).toEqual([
    { edge: 'zero', result: sedimentByPlace(polygon(SQUARE), inside, ZERO) },
    { edge: 'nearest', result: sedimentByPlace(polygon(SQUARE), inside, NEAREST) },
  ]);
  expect(sedimentByEdge(polygon(SQUARE), metres(at(3, 3), at(0, 5)))?.map(({ edge }) => edge)).toEqual(['zero', 'nearest', 'shore-readings']);
  expect(sedimentByEdge(polygon(SQUARE), metres({ toSediment: 1, toBottom: 2 }))).toBeNull();
  expect(sedimentByEdge(polygon(SQUARE), metres(at(50, 50)))).toBeNull();
  expect(sedimentByEdge({ shape: 'rectangle', length: { value: 10, unit: 'm' }, width: { value: 5, unit: 'm' } }, inside)).toBeNull();
});

test('refuses what has no places, with the field', () => {
  const ellipse = { shape: 'ellipse', length: { value: 10, unit: 'm' }, width: { value: 5, unit: 'm' } } as const;
  expect(refusals(() => sedimentByPlace(ellipse, metres(at(5, 5)), ZERO))).toEqual(['/outline/shape']);
  expect(refusals(() => sedimentByPlace(polygon(SQUARE), metres(at(50, 5)), ZERO))).toEqual(['/probes/readings']);
  expect(refusals(() => sedimentByPlace(polygon(SQUARE), metres({ toSediment: 1, toBottom: 2 }), ZERO))).toEqual(['/probes/readings']);
  expect(refusals(() => sedimentByPlace(polygon(SQUARE), metres(at(5, 5, 2, 1)), ZERO))).toEqual(['/probes/readings/0/toBottom']);
  expect(refusals(() => sedimentByPlace(polygon(SQUARE), metres(at(5, 5)), { kind: 'shore-readings' }))).toEqual(['/edge']);
});

test('never shows an interval that is too wide as the one that is wanted', () => {
  const { warnings } = sedimentByPlace(polygon(SQUARE), metres(at(3, 3, 0, 0.091), at(6, 6, 0, 0.1), at(3, 7, 0, 0.109)), NEAREST);
  // 2.919986 × 0.009 / √3 / 0.1 = 15.17 %; a fourth reading makes it 10.6 %.
  expect(warnings.join(' ')).toContain('±16 %, wider than ±15 %: take 1 more reading, spread');
});
