export { roundUpToIncrement } from './increment.js';
export { laborLine } from './labor-line.js';
export type { LaborLine, LaborLineInput, LaborQuantity, LaborRule } from './labor-types.js';
export { partLine, type PartLine, type PartLineInput } from './part-line.js';
export { otherLine, type OtherLine, type OtherLineInput } from './other-line.js';
export { quoteTotals, type QuoteTotals } from './quote-totals.js';
