export { minutesToHours, paidMinutes, type WorkedSpan } from './paid-time.js';
export { laborCost } from './labor-cost.js';
