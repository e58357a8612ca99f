import fc from 'fast-check';
import { longestChord, operatingPoint, pumpCurve, systemCurve, type FrictionMethod, type PumpingSystem } from '../../src/domain/trade/hydraulics/index.js';
import type { CurvePoint } from '../../src/domain/trade/pump-curve/index.js';
import { feet, gpm, inches, LOOP, pipe } from './hydraulics-support.js';
import { starPolygon } from './support.js';

const method = fc.constantFrom<FrictionMethod>('hazen-williams', 'darcy-weisbach');
const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const run = fc.record({ innerDiameterM: number(inches(0.75), inches(6)), lengthM: number(0.1, 100), otherK: number(0, 20), hazenWilliamsC: number(80, 150) }).map(pipe);
const system: fc.Arbitrary<PumpingSystem> = fc.record({ runs: fc.array(run, { minLength: 1, maxLength: 4 }), staticLiftM: number(0, 6), vessels: fc.constant([]), waterTemperatureC: number(0, 30) });
/** Falling curves, level stretches among them, that end at no head, so that every system of some lift meets them. */
const curve: fc.Arbitrary<CurvePoint[]> = fc.array(fc.record({ flow: fc.integer({ min: 1, max: 40 }), fall: fc.integer({ min: 0, max: 8 }) }), { minLength: 1, maxLength: 12 }).map((steps) => {
  const heads = steps.map((_, i) => 2 + steps.slice(i).reduce((sum, { fall }) => sum + fall, 0));
  const flows = steps.map((_, i) => steps.slice(0, i).reduce((sum, { flow }) => sum + flow, 0));
  const most = steps.reduce((sum, { flow }) => sum + flow, 0);
  return [...heads.map((head, i) => ({ flowM3PerS: gpm(flows[i] ?? 0), headM: feet(head) })), { flowM3PerS: gpm(most), headM: 0 }];
});

/** The flow, or 0 where the pump can't lift so high. */
function flowOf(points: CurvePoint[], load: PumpingSystem, by: FrictionMethod): number {
  const point = operatingPoint(pumpCurve(points), systemCurve(load), by);
  return point.kind === 'cannot-lift' ? 0 : point.flow;
}

/** Ties may differ in the last bits. */
function expectNoMore(flow: number, than: number): void {
  expect(flow).toBeLessThanOrEqual(than * (1 + 1e-9) + 1e-14);
}

const changeFirst = (load: PumpingSystem, change: (run: PumpingSystem['runs'][number]) => object): PumpingSystem => ({ ...load, runs: load.runs.map((one, i) => (i === 0 ? { ...one, ...change(one) } : one)) });

test('a longer pipe never gains flow', () => {
  fc.assert(fc.property(curve, system, method, number(1, 10), (points, load, by, times) => {
    expectNoMore(flowOf(points, changeFirst(load, ({ lengthM }) => ({ lengthM: lengthM * times })), by), flowOf(points, load, by));
  }));
});

test('a wider pipe never loses flow', () => {
  fc.assert(fc.property(curve, system, method, number(1, 3), (points, load, by, times) => {
    expectNoMore(flowOf(points, load, by), flowOf(points, changeFirst(load, ({ innerDiameterM }) => ({ innerDiameterM: innerDiameterM * times })), by));
  }));
});

test('a higher lift or one more elbow never gains flow', () => {
  fc.assert(fc.property(curve, system, method, number(0, 3), (points, load, by, more) => {
    const before = flowOf(points, load, by);
    expectNoMore(flowOf(points, { ...load, staticLiftM: load.staticLiftM + more }, by), before);
    expectNoMore(flowOf(points, changeFirst(load, () => ({ fittings: [{ kind: 'elbow-90', count: 1 }] })), by), before);
  }));
});

test('a run cut in two loses what the whole loses', () => {
  fc.assert(fc.property(run, number(0.01, 0.99), number(1, 100), method, (whole, share, flow, by) => {
    const part = (of: number): typeof whole => ({ ...whole, lengthM: whole.lengthM * of, otherK: whole.otherK * of });
    const head = (runs: PumpingSystem['runs']): number => systemCurve({ ...LOOP, runs }).headAt(gpm(flow), by);
    expect(head([part(share), part(1 - share)]) / head([whole])).toBeCloseTo(1, 9);
  }));
});

test('a pump curve goes through its points, and between two of them it neither rises nor leaves their heads', () => {
  fc.assert(fc.property(curve, (points) => {
    const { headAt } = pumpCurve(points);
    points.forEach(({ flowM3PerS, headM }) => expect(headAt(flowM3PerS)).toBeCloseTo(headM, 9));
    points.slice(1).forEach((right, i) => {
      const left = points[i] ?? right;
      let before = left.headM;
      for (let part = 1; part <= 8; part += 1) {
        const head = headAt(left.flowM3PerS + ((right.flowM3PerS - left.flowM3PerS) * part) / 8);
        expect(head).toBeLessThanOrEqual(before + 1e-9);
        expect(head).toBeGreaterThanOrEqual(right.headM - 1e-9);
        before = head;
      }
    });
  }));
});

test('at the operating point pump and system have the same head', () => {
  fc.assert(fc.property(curve, system, method, (points, load, by) => {
    const [pump, piping] = [pumpCurve(points), systemCurve(load)];
    const point = operatingPoint(pump, piping, by);
    if (point.kind !== 'point') return;
    expect(pump.headAt(point.flow)).toBeCloseTo(piping.headAt(point.flow, by), 6);
  }));
});

test('the longest chord of an outline is the greatest distance of all pairs of its points, whichever comes first', () => {
  fc.assert(fc.property(starPolygon, fc.nat(), (points, n) => {
    const pairs = points.flatMap(([x, y]) => points.map(([u, v]) => Math.hypot(u - x, v - y)));
    const start = n % points.length;
    for (const list of [points, [...points].reverse(), [...points.slice(start), ...points.slice(0, start)]]) {
      expect(longestChord({ shape: 'polygon', unit: 'm', points: list }) / Math.max(...pairs)).toBeCloseTo(1, 12);
    }
  }));
});
