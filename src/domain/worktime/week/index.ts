export { type BurdenComponent, burdenOn } from './burden.js';
export { type CutSpan, cutByDay, type LoggedSpan } from './cut.js';
export { overtimeMinutes, overtimePremium, type OvertimeThresholds, regularRate } from './overtime.js';
export { shareOut } from './share-out.js';
export { type BurdenAmount, type EarnedBefore, weekLabor, type WeekLabor, weekPay, type WeekTerms, type WorkPiece } from './week-labor.js';
