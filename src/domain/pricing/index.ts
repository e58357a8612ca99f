export { roundUpToIncrement } from './increment.js';
export { laborLine, type LaborLine, type LaborLineInput, type LaborQuantity, type LaborRule } from './labor-line.js';
export { partLine, type PartLine, type PartLineInput } from './part-line.js';
export { otherLine, type OtherLine, type OtherLineInput } from './other-line.js';
export { quoteTotals, type QuoteTotals } from './quote-totals.js';
