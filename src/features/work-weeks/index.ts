export { WorkWeeksModule } from './work-weeks.module.js';
export { WorkWeeksService } from './work-weeks.service.js';
export { WorkWeekPoliciesService } from './policy/work-week-policies.service.js';
export type { WorkWeekPolicyBody } from './policy/work-week-policies.dto.js';
export { BurdenRatesService } from './burden/burden-rates.service.js';
export type { BurdenRateBody } from './burden/burden-rates.dto.js';
