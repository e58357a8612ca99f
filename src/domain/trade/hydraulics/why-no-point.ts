import type { OperatingPoint } from './operating-point.js';
import { shownFlow, shownHead } from './shown.js';

/** In words, why pump and system do not meet. */
export function whyNoPoint(point: Exclude<OperatingPoint, { kind: 'point' }>): string {
  const { pumpHead, systemHead } = point;
  return point.kind === 'cannot-lift'
    ? `the pump has ${shownHead(pumpHead)} of head at the start of its curve, where the system asks for ${shownHead(systemHead)}.`
    : `at the end of its curve, ${shownFlow(point.flow)}, the pump still has ${shownHead(pumpHead)} where the system asks for ${shownHead(systemHead)}; it would run where its curve says nothing. Throttle it, or take a smaller one.`;
}
