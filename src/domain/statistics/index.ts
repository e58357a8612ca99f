export { margin, marginPercent } from './margin.js';
export { compareHours, type CostCodeHours, type HoursComparison, type PlannedAndActual } from './hours-by-cost-code.js';
export { studentT95 } from './student-t.js';
