import { polygonHull } from 'd3-polygon';
import fc from 'fast-check';
import { decimal } from '../../src/domain/decimal.js';
import { convert } from '../../src/domain/quantity/index.js';
import { boundingRectangle, cutPlans, cutStrips, linerSheet, outlineSpans, planCost, type PricedRoll, type ProfileStep } from '../../src/domain/trade/liner/index.js';
import type { Point } from '../../src/domain/trade/index.js';
import { refusals, starPolygon } from './support.js';

const stretch: fc.Arbitrary<ProfileStep> = fc.record({ dropM: fc.double({ min: 0.01, max: 1, noNaN: true }), runM: fc.double({ min: 0, max: 0.5, noNaN: true }) });
const profile = fc.array(stretch, { minLength: 1, maxLength: 6 });

describe('a sheet', () => {
  it('is never larger than the usual rule says, and equal to it for walls and shelves', () => {
    fc.assert(
      fc.property(profile, (steps) => {
        const sloped = linerSheet(20, 12, steps, 0.3);
        expect(sloped.lengthM).toBeLessThanOrEqual(sloped.ruleLengthM + 1e-9);
        const terraced = linerSheet(20, 12, steps.flatMap(({ dropM, runM }) => [{ dropM, runM: 0 }, ...(runM > 0 ? [{ dropM: 0, runM }] : [])]), 0.3);
        expect(terraced.lengthM).toBeCloseTo(terraced.ruleLengthM, 9);
        expect(terraced.widthM).toBeCloseTo(terraced.ruleWidthM, 9);
      }),
    );
  });

  it('doubles in each direction when every measure doubles, and a stretch cut in two changes nothing', () => {
    fc.assert(
      fc.property(profile, (steps) => {
        const once = linerSheet(20, 12, steps, 0.3);
        const twice = linerSheet(40, 24, steps.map(({ dropM, runM }) => ({ dropM: 2 * dropM, runM: 2 * runM })), 0.6);
        expect(twice.areaM2 / once.areaM2).toBeCloseTo(4, 9);
        const halves = steps.flatMap(({ dropM, runM }) => [{ dropM: dropM / 2, runM: runM / 2 }, { dropM: dropM / 2, runM: runM / 2 }]);
        expect(linerSheet(20, 12, halves, 0.3).areaM2).toBeCloseTo(once.areaM2, 9);
      }),
    );
  });

  it('refuses runs that do not fit into the width, and warns of steep sides and a scant overlap', () => {
    expect(refusals(() => linerSheet(5, 2, [{ dropM: 1, runM: 1.01 }], 0.3))).toEqual(['/profile']);
    expect(refusals(() => linerSheet(5, 2, [{ dropM: 0, runM: 0 }], 0.3))).toEqual(['/profile/0']);
    expect(linerSheet(5, 4, [{ dropM: 1, runM: 1 }], 0.3).warnings).toHaveLength(1);
    expect(linerSheet(5, 4, [{ dropM: 1, runM: 0.9 }], 0.1).warnings.join()).toMatch(/Less than about 1 ft[^]*steeper than 1:1/);
  });
});

describe('the rectangle around an outline', () => {
  it('is the smallest that any side of the hull gives (hull by d3-polygon, every side tried against every point)', () => {
    fc.assert(
      fc.property(starPolygon, fc.double({ min: 0, max: 5, noNaN: true }), (points, margin) => {
        const { lengthM, widthM } = boundingRectangle(points, margin);
        const slow = slowest(points, margin);
        expect(((lengthM + margin) * (widthM + margin)) / slow).toBeCloseTo(1, 9);
      }),
    );
  });

  it('does not depend on orientation, start point or turning of the outline', () => {
    fc.assert(
      fc.property(starPolygon, fc.nat(), fc.double({ min: 0, max: 7, noNaN: true }), (points, n, angle) => {
        const start = n % points.length;
        const turned = [...points.slice(start), ...points.slice(0, start)].reverse().map(([x, y]): Point => [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)]);
        const area = ({ lengthM, widthM }: { lengthM: number; widthM: number }): number => lengthM * widthM;
        expect(area(boundingRectangle(turned)) / area(boundingRectangle(points))).toBeCloseTo(1, 6);
      }),
    );
  });

  it('is the box of a rectangle and an ellipse, and nothing for an area alone', () => {
    const length = { value: 3, unit: 'm' as const };
    const width = { value: 8, unit: 'm' as const };
    expect(outlineSpans({ shape: 'ellipse', length, width }, 1)).toEqual({ lengthM: 8, widthM: 3 });
    const tilted = outlineSpans({ shape: 'polygon', unit: 'm', points: [[0, 0], [4, 4], [2, 6], [-2, 2]] }, 0);
    expect([tilted.lengthM, tilted.widthM]).toEqual([expect.closeTo(Math.sqrt(32), 9), expect.closeTo(Math.sqrt(8), 9)]);
    expect(refusals(() => outlineSpans({ shape: 'measured', area: { value: 9, unit: 'm2' }, perimeter: { value: 14, unit: 'm' } }, 0))).toEqual(['/shape']);
    expect(refusals(() => boundingRectangle([[0, 0], [1, 1], [2, 2]]))).toEqual(['']);
  });

  function slowest(points: readonly Point[], margin: number): number {
    const hull = polygonHull(points.map(([x, y]): [number, number] => [x, y])) ?? [];
    const sheets = hull.map(([x, y], i) => {
      const [u, v] = hull[(i + 1) % hull.length] as [number, number];
      const angle = Math.atan2(v - y, u - x);
      const spread = (of: (point: Point) => number): number => Math.max(...points.map(of)) - Math.min(...points.map(of));
      return (spread(([a, b]) => a * Math.cos(angle) + b * Math.sin(angle)) + margin) * (spread(([a, b]) => b * Math.cos(angle) - a * Math.sin(angle)) + margin);
    });
    return Math.min(...sheets);
  }
});

describe('a cut', () => {
  const rollOf = (name: string, widthM: number, lengthM: number, pricePerM: number | null, wholeOnly = false): PricedRoll => ({ name, widthM, lengthM, pricePerM, wholeOnly });
  const roll = fc.record({
    name: fc.constant('roll'),
    widthM: fc.double({ min: 0.6, max: 8, noNaN: true }),
    lengthM: fc.double({ min: 2, max: 60, noNaN: true }),
    pricePerM: fc.double({ min: 0.5, max: 100, noNaN: true }),
    wholeOnly: fc.boolean(),
  });
  const sheet = fc.record({ lengthM: fc.double({ min: 1, max: 40, noNaN: true }), widthM: fc.double({ min: 1, max: 25, noNaN: true }) });

  it('covers the sheet; what is bought is sheet, overlaps and waste, and waste is never below 0', () => {
    fc.assert(
      fc.property(sheet, fc.array(roll, { minLength: 1, maxLength: 4 }), (size, rolls) => {
        for (const plan of cutPlans(size, rolls, 0.1, 2)) {
          const across = plan.direction === 'along-length' ? size.widthM : size.lengthM;
          const strips = plan.strips.reduce((sum, { count }) => sum + count, 0);
          const covered = plan.strips.reduce((sum, strip) => sum + strip.count * (rolls[strip.roll]?.widthM ?? 0), 0) - (strips - 1) * 0.1;
          expect(covered).toBeGreaterThanOrEqual(across - 1e-6);
          expect(plan.wasteM2).toBeGreaterThanOrEqual(0);
          expect(plan.seams).toBe(strips - 1 + plan.strips.reduce((sum, { count, pieces }) => sum + count * (pieces - 1), 0));
        }
      }),
    );
  });

  it('is the cheapest of all mixes of two rolls, counted out one by one', () => {
    fc.assert(
      fc.property(sheet, roll, roll, (size, a, b) => {
        const best = cutPlans(size, [a, b], 0.1, 3)[0]?.rank ?? Infinity;
        let least = Infinity;
        for (const [along, across] of [[size.lengthM, size.widthM], [size.widthM, size.lengthM]] as const) {
          for (let n = 0; n <= 80; n += 1) {
            for (let m = 0; m <= 80; m += 1) {
              if (n + m === 0 || n * a.widthM + m * b.widthM - (n + m - 1) * 0.1 < across - 1e-9) continue;
              const [first, second] = [cutStrips(a, n, along, 0.1), cutStrips(b, m, along, 0.1)];
              const seams = (n + m - 1) * along + n * (first.pieces - 1) * a.widthM + m * (second.pieces - 1) * b.widthM;
              least = Math.min(least, first.boughtM * a.pricePerM + second.boughtM * b.pricePerM + seams * 3);
              break;
            }
          }
        }
        expect(best / least).toBeLessThanOrEqual(1 + 1e-6);
        expect(best / least).toBeGreaterThanOrEqual(1 - 1e-6);
      }),
      { numRuns: 60 },
    );
  });

  it('never costs more when one more roll can be had', () => {
    fc.assert(
      fc.property(sheet, fc.array(roll, { minLength: 1, maxLength: 3 }), roll, (size, rolls, more) => {
        const cost = (list: PricedRoll[]): number => cutPlans(size, list, 0.1, 2)[0]?.rank ?? Infinity;
        expect(cost([...rolls, more])).toBeLessThanOrEqual(cost(rolls) + 1e-9);
      }),
    );
  });

  it('takes one strip from a roll that is wide enough, and two with a seam from one that is not', () => {
    const [one] = cutPlans({ lengthM: 7, widthM: 5.5 }, [rollOf('wide', 6, 30, 60)], 0.1, 0);
    expect([one?.strips[0]?.count, one?.seams, one?.direction]).toEqual([1, 0, 'along-length']);
    expect(one?.wasteM2).toBeCloseTo(7 * 0.5, 9);
    const [two] = cutPlans({ lengthM: 7, widthM: 5.5 }, [rollOf('narrow', 3, 30, 30)], 0.1, 0);
    expect([two?.strips[0]?.count, two?.seams, two?.seamLengthM]).toEqual([2, 1, 7]);
  });

  it('shows no waste where a strip in two pieces covers the sheet exactly, and not a little less than none', () => {
    // 18 ft from rolls of 10 ft with a seam of 10 in: without rounding care, -4e-15 m2.
    const tenFeet = { name: '10 ft', widthM: 3.048, lengthM: 3.048, wholeOnly: false, pricePerM: 1 };
    const plan = cutPlans({ lengthM: 3.048, widthM: 5.4864 }, [tenFeet], 0.254, 0).find(({ direction }) => direction === 'along-width');
    expect(plan).toMatchObject({ strips: [{ count: 1, pieces: 2 }], wasteM2: 0 });
  });

  it('joins a strip that is longer than its roll, and lets remainders share a roll', () => {
    expect(cutStrips({ lengthM: 10, wholeOnly: true }, 2, 13.9, 0.1)).toEqual({ pieces: 2, cutM: 28, boughtM: 30, rolls: 3 });
    expect(cutStrips({ lengthM: 10, wholeOnly: false }, 3, 3, 0.1)).toEqual({ pieces: 1, cutM: 9, boughtM: 9, rolls: 1 });
  });

  it('is exact to the cent, each roll and the seams rounded once', () => {
    const rolls = [rollOf('by area', convert(20, 'ft', 'm'), convert(100, 'ft', 'm'), 1)];
    const [plan] = cutPlans({ lengthM: convert(23, 'ft', 'm'), widthM: convert(18, 'ft', 'm') }, rolls, 0.0762, 0);
    if (plan === undefined) throw new Error('there is a plan');
    expect(planCost(plan, rolls, [{ amount: decimal('0.87'), per: 'ft2' }], null, 'USD').toFixed(2)).toBe('400.20');
    expect(planCost(plan, rolls, [{ amount: decimal('17.40'), per: 'ft' }], null, 'USD').toFixed(2)).toBe('400.20');
    expect(planCost({ ...plan, seamLengthM: convert(10, 'ft', 'm') }, rolls, [{ amount: decimal('0.87'), per: 'ft2' }], { amount: decimal('2.15'), per: 'ft' }, 'USD').toFixed(2)).toBe('421.70');
    const whole = { ...plan, strips: plan.strips.map((strip) => ({ ...strip, boughtM: convert(200, 'ft', 'm') })) };
    expect(planCost(whole, rolls, [{ amount: decimal('1740.00'), per: 'roll' }], null, 'USD').toFixed(2)).toBe('3480.00');
  });

  it('refuses a roll that is hardly wider than a seam, and prices for some rolls only', () => {
    expect(refusals(() => cutPlans({ lengthM: 5, widthM: 5 }, [rollOf('a', 0.39, 30, 1)], 0.1, 0))).toEqual(['/rolls/0/width']);
    expect(refusals(() => cutPlans({ lengthM: 5, widthM: 5 }, [rollOf('a', 2, 30, 1), rollOf('b', 3, 30, null)], 0.1, 0))).toEqual(['/rolls/1/price']);
  });
});
