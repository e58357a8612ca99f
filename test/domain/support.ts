import fc from 'fast-check';
import { DomainError } from '../../src/domain/errors.js';
import type { Point } from '../../src/domain/trade/index.js';

/** The pointers of what `work` refuses; a test that expects a refusal fails when nothing is refused. */
export function refusals(work: () => unknown): string[] {
  try {
    work();
  } catch (error) {
    if (error instanceof DomainError) return error.violations.map(({ pointer }) => pointer);
    throw error;
  }
  throw new Error('Nothing was refused.');
}

/** Simple polygons: one point on each of several rays around a center, in turning order. */
export const starPolygon: fc.Arbitrary<Point[]> = fc
  .record({
    radii: fc.array(fc.integer({ min: 100, max: 2_000 }), { minLength: 3, maxLength: 40 }),
    x: fc.integer({ min: -500, max: 500 }),
    y: fc.integer({ min: -500, max: 500 }),
  })
  .map(({ radii, x, y }) =>
    radii.map((radius, i): Point => {
      const turn = (2 * Math.PI * i) / radii.length;
      return [x + (radius / 100) * Math.cos(turn), y + (radius / 100) * Math.sin(turn)];
    }),
  );
