/**
 * Operating points, all D: derived from the formulas. Heads of the loop were derived with the textbook form 0.2083 of
 * Hazen-Williams, which lies up to 1 % of the friction above the form of hydraulic solvers that we use.
 */
import { operatingPoint, pumpCurve, systemCurve, type SystemCurve } from '../../src/domain/trade/hydraulics/index.js';
import { gpm, inFeet, inGpm, LOOP, quadraticCurve } from '../domain/hydraulics-support.js';

it('pump 30 − 0.005 Q² on 10 + 0.003 Q² meets at 50 gpm and 17.5 ft', () => {
  const headAt = (flow: number): number => (10 + 0.003 * inGpm(flow) ** 2) * 0.3048;
  const system: SystemCurve = { ...systemCurve(LOOP), headAt };
  const point = operatingPoint(pumpCurve(quadraticCurve(30, 0.005, 77, 78)), system, 'hazen-williams');
  expect(point.kind).toBe('point');
  if (point.kind !== 'point') return;
  expect(inGpm(point.flow)).toBeCloseTo(50, 2);
  expect(inFeet(point.head)).toBeCloseTo(17.5, 2);
});

it.each([[20, 8.79], [40, 10.986], [50, 12.585], [60, 14.51]])('60 ft of 2 in with K 6.11 and 8 ft of lift ask for the head at %d gpm: %d ft', (flow, feet) => {
  const head = inFeet(systemCurve(LOOP).headAt(gpm(flow), 'hazen-williams'));
  expect(head).toBeLessThanOrEqual(feet);
  expect(head / feet).toBeGreaterThan(0.997);
});

it('the same with a pump of 25 − 0.0035 Q² runs at 56.55 gpm and 13.81 ft', () => {
  const point = operatingPoint(pumpCurve(quadraticCurve(25, 0.0035, 84, 43)), systemCurve(LOOP), 'hazen-williams');
  if (point.kind !== 'point') throw new Error(point.kind);
  expect(Math.abs(inGpm(point.flow) / 56.55 - 1)).toBeLessThan(0.002);
  expect(Math.abs(inFeet(point.head) / 13.81 - 1)).toBeLessThan(0.002);
});
