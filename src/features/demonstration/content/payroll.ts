import type { BurdenRateBody, WorkWeekPolicyBody } from '../../work-weeks/index.js';

/** From the company's first day on. The ten hours a day are its own rule: federal law has none for a day. */
export const WORK_WEEK: Omit<WorkWeekPolicyBody, 'id' | 'effectiveFrom'> = { startsOn: 'monday', startsAt: '00:00', weeklyOvertimeHours: '40', dailyOvertimeHours: '10' };

/** Invented, as are their names: none is the rate of any law or insurer. */
export const BURDEN: readonly Omit<BurdenRateBody, 'id' | 'effectiveFrom'>[] = [
  { code: 'payroll-charges', name: 'Charges on all pay (invented)', percent: '9.1', yearlyWageCap: null, base: 'all-pay' },
  { code: 'injury-cover', name: 'Cover for injuries, on pay without the overtime premium (invented)', percent: '7.4', yearlyWageCap: null, base: 'straight-pay' },
  { code: 'yearly-fund', name: 'Fund that is due on the first wages of a year (invented)', percent: '2.5', yearlyWageCap: '8000.00', base: 'all-pay' },
];
