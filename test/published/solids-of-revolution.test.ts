/**
 * Solids whose volume elementary geometry gives exactly: pyramid (base × height / 3), cone (π r² h / 3), prism
 * (base × height), paraboloid (π r² h / 2, Archimedes). All values D: derived from the definition.
 */
import { sedimentByPlace, type EdgeRule } from '../../src/domain/trade/sediment/index.js';
import type { Point, PolygonOutline, ProbeReading, Probes } from '../../src/domain/trade/index.js';

const polygon = (points: readonly Point[]): PolygonOutline => ({ shape: 'polygon', unit: 'm', points });
const circle = (radius: number, corners: number): Point[] =>
  Array.from({ length: corners }, (_, i): Point => [radius * Math.cos((2 * Math.PI * i) / corners), radius * Math.sin((2 * Math.PI * i) / corners)]);
/** Sediment of a given thickness under a meter of water. */
const reading = (x: number, y: number, thickness: number): ProbeReading => ({ at: [x, y], toSediment: 1, toBottom: 1 + thickness });
const probes = (readings: readonly ProbeReading[]): Probes => ({ unit: 'm', readings });
const sediment = (outline: PolygonOutline, readings: readonly ProbeReading[], edge: EdgeRule): number => sedimentByPlace(outline, probes(readings), edge).triangulated.sedimentM3;

/** An L: 20 × 14 less 8 × 6, 232 in area. */
const L_SHAPE: Point[] = [[0, 0], [20, 0], [20, 8], [12, 8], [12, 14], [0, 14]];

describe('exact solids', () => {
  it.each([3, 4, 6, 12, 48])('a pyramid over %d sides, from one reading in its middle, holds a third of its prism', (sides) => {
    const points = circle(10, sides);
    const base = (sides / 2) * 100 * Math.sin((2 * Math.PI) / sides);
    expect(sediment(polygon(points), [reading(0, 0, 0.9)], { kind: 'zero' })).toBeCloseTo((base * 0.9) / 3, 9);
  });

  it('a cone, its shore taken at 720 points, holds π r² h / 3', () => {
    expect(sediment(polygon(circle(10, 720)), [reading(0, 0, 0.9)], { kind: 'zero' }) / ((Math.PI * 100 * 0.9) / 3)).toBeCloseTo(1, 4);
  });

  it.each(['nearest', 'given'] as const)('a prism over a concave outline holds base × thickness, by the edge %s', (kind) => {
    const edge: EdgeRule = kind === 'given' ? { kind, thicknessM: 0.3, depthM: 1.3 } : { kind };
    const { triangulated } = sedimentByPlace(polygon(L_SHAPE), probes([reading(3, 3, 0.3), reading(17, 4, 0.3), reading(6, 12, 0.3)]), edge);
    expect(triangulated.areaM2).toBeCloseTo(232, 9);
    expect(triangulated.sedimentM3).toBeCloseTo(232 * 0.3, 9);
    expect(triangulated.toBottomM3).toBeCloseTo(232 * 1.3, 9);
    expect(triangulated.leftOut).toBeGreaterThan(0);
  });

  it('a wedge over a concave outline, read at every corner, holds area × thickness at the middle of the area', () => {
    // Middle of the L: (280 × (10, 7) - 48 × (16, 11)) / 232.
    const thickness = (x: number, y: number): number => 0.2 + 0.01 * x + 0.02 * y;
    const volume = 232 * thickness((2800 - 768) / 232, (1960 - 528) / 232);
    const readings = L_SHAPE.map(([x, y]) => reading(x, y, thickness(x, y)));
    expect(sediment(polygon(L_SHAPE), readings, { kind: 'shore-readings' })).toBeCloseTo(volume, 9);
    expect(sediment(polygon(L_SHAPE), [...readings, reading(4, 9, thickness(4, 9))], { kind: 'shore-readings' })).toBeCloseTo(volume, 9);
  });

  it('a paraboloid comes nearer to π r² h / 2 with the square of the spacing of the readings', () => {
    const exact = (Math.PI * 100 * 0.9) / 2;
    const short = (spacing: number): number => {
      const readings: ProbeReading[] = [];
      for (let x = -10; x <= 10; x += spacing) for (let y = -10; y <= 10; y += spacing) if (x * x + y * y < 98) readings.push(reading(x, y, 0.9 * (1 - (x * x + y * y) / 100)));
      return 1 - sediment(polygon(circle(10, 2000)), readings, { kind: 'zero' }) / exact;
    };
    expect(short(2)).toBeLessThan(0.025);
    expect(short(1)).toBeLessThan(0.0075);
    expect(short(2) / short(1)).toBeGreaterThan(3);
    expect(short(1)).toBeGreaterThan(0);
  });
});
