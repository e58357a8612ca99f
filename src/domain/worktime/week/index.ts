export { type BurdenComponent, burdenOn } from './burden.js';
export { type CutSpan, cutWork, type LoggedSpan, placeOf } from './cut.js';
export { overtimeIn, overtimePremium, type OvertimeThresholds, regularRate } from './overtime.js';
export { shareOut } from './share-out.js';
export { type BurdenAmount, weekLabor, type WeekLabor, type WeekTerms, type WorkPiece } from './week-labor.js';
export { inMinutes, type PaidTime, type PayTerms, type WeekPay, weekPay } from './week-pay.js';
export { type EarnedBefore, NOTHING_EARNED, type OpeningWages, type PaidWeek, yearToDate } from './year-to-date.js';
