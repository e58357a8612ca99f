import fc from 'fast-check';
import { requireFallingCurve } from '../../src/domain/trade/pump-curve/index.js';
import { DomainError } from '../../src/domain/errors.js';

const figures = (size: number) => fc.uniqueArray(fc.integer({ min: 0, max: 10_000 }), { minLength: size, maxLength: size }).map((list) => list.sort((a, b) => a - b));
const curves = fc.integer({ min: 2, max: 20 }).chain((size) =>
  fc.tuple(figures(size), figures(size)).map(([flows, heads]) => flows.map((flow, i) => ({ flowM3PerS: flow / 1e6, headM: heads[size - 1 - i] as number }))),
);

function refused(points: Parameters<typeof requireFallingCurve>[0]): string[] {
  try {
    requireFallingCurve(points);
    return [];
  } catch (error) {
    return (error as DomainError).violations.map(({ pointer }) => pointer);
  }
}

describe('a pump curve', () => {
  it('passes when every flow is more and no head is more than the one before', () => {
    fc.assert(fc.property(curves, (points) => expect(refused(points)).toEqual([])));
  });

  it('is refused at the very point whose head rises', () => {
    fc.assert(
      fc.property(curves, fc.nat(), (points, n) => {
        const at = 1 + (n % (points.length - 1));
        const lifted = points.map((point, i) => (i === at ? { ...point, headM: (points[at - 1]?.headM ?? 0) + 1 } : point));
        expect(refused(lifted)).toEqual([`/${at}/head`]);
      }),
    );
  });

  it('is refused when it is given from its other end', () => {
    fc.assert(fc.property(curves, (points) => expect(refused([...points].reverse())).toEqual(points.slice(1).map((_, i) => `/${i + 1}/flow`))));
  });

  it('may be level, and needs two points', () => {
    expect(refused([{ flowM3PerS: 0, headM: 7 }, { flowM3PerS: 0.001, headM: 7 }])).toEqual([]);
    expect(refused([{ flowM3PerS: 0, headM: 7 }])).toEqual(['']);
  });
});
