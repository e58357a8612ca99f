import { HAZEN_WILLIAMS_EXPONENT, velocity } from './friction.js';
import type { SystemCurve } from './pumping-system.js';

/** What one run loses at a flow: m of head; m/s. */
export interface RunLosses {
  readonly velocity: number;
  readonly sumOfK: number;
  readonly hazenWilliamsM: number;
  readonly darcyWeisbachM: number;
  readonly minorM: number;
}

/** The losses of every run at a flow in m3/s, both friction formulas beside each other. */
export function runLossesAt({ system, resistances }: SystemCurve, flow: number): RunLosses[] {
  return resistances.map(({ sumOfK, hazenWilliams, darcyWeisbach, minor }, i) => ({
    velocity: velocity(flow, system.runs[i]?.innerDiameterM ?? NaN),
    sumOfK,
    hazenWilliamsM: hazenWilliams * flow ** HAZEN_WILLIAMS_EXPONENT,
    darcyWeisbachM: darcyWeisbach(flow),
    minorM: minor * flow * flow,
  }));
}
