import { DomainError, type Violation } from '../../errors.js';

/** A point of a pump's curve: the head in m that it lifts to at a flow in m3/s. */
export interface CurvePoint {
  readonly flowM3PerS: number;
  readonly headM: number;
}

/**
 * Refuses a curve that is no function of the flow, or on which more flow comes with more head: there the pump meets the
 * pipe's resistance at two flows, so that no single operating point can be told, and in practice it is a typing error.
 * Level stretches are allowed: many printed curves begin with one.
 * @param points in the order of rising flow
 * @throws DomainError at /i/flow or /i/head of every point that is out of order, or at "" for fewer than two points
 */
export function requireFallingCurve(points: readonly CurvePoint[]): void {
  if (points.length < 2) throw DomainError.at('', 'needs at least two points of flow and head');
  const violations: Violation[] = [];
  for (let i = 1; i < points.length; i++) {
    const [before, here] = [points[i - 1], points[i]];
    if (before === undefined || here === undefined) continue;
    if (here.flowM3PerS <= before.flowM3PerS) violations.push({ pointer: `/${i}/flow`, detail: 'must be more than the flow of the point before; give the points in the order of rising flow, each flow once' });
    else if (here.headM > before.headM) violations.push({ pointer: `/${i}/head`, detail: 'must not be more than the head of the point before: the head of a pump falls as the flow rises; check both points' });
  }
  if (violations.length > 0) throw new DomainError(violations);
}
