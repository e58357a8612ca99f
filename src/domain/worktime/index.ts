export { minutesToHours, paidMinutes, type WorkedSpan } from './paid-time.js';
export { laborCost } from './labor-cost.js';
export { type Break, isShortRest, requireBreaksWithin, SHORTEST_UNPAID_REST_MINUTES, unpaidBreakSeconds } from './breaks.js';
