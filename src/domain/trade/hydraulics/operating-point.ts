import type { PumpCurve } from './pump-curve.js';
import type { FrictionMethod, SystemCurve } from './pumping-system.js';

/** Where pump and system meet, or why they do not. Flow m3/s, head m. */
export type OperatingPoint =
  | { readonly kind: 'point'; readonly flow: number; readonly head: number }
  /** Already at its first point the pump has less head than the system asks for. */
  | { readonly kind: 'cannot-lift'; readonly pumpHead: number; readonly systemHead: number }
  /** At its last point the pump still has head to spare: it runs where its maker says nothing. */
  | { readonly kind: 'past-curve'; readonly flow: number; readonly pumpHead: number; readonly systemHead: number };

/** Enough halvings to find a flow to the last bits of a number. */
const HALVINGS = 60;

/** Solves H_pump(Q) = H_system(Q) by bisection over the flows that the pump's curve covers. */
export function operatingPoint(curve: PumpCurve, system: SystemCurve, method: FrictionMethod): OperatingPoint {
  const spare = (flow: number): number => curve.headAt(flow) - system.headAt(flow, method);
  let [low, high] = [curve.leastFlow, curve.mostFlow];
  if (spare(low) <= 0) return { kind: 'cannot-lift', pumpHead: curve.headAt(low), systemHead: system.headAt(low, method) };
  if (spare(high) > 0) return { kind: 'past-curve', flow: high, pumpHead: curve.headAt(high), systemHead: system.headAt(high, method) };
  for (let i = 0; i < HALVINGS && high - low > 1e-15; i += 1) {
    const middle = (low + high) / 2;
    if (spare(middle) > 0) low = middle;
    else high = middle;
  }
  const flow = (low + high) / 2;
  return { kind: 'point', flow, head: system.headAt(flow, method) };
}
