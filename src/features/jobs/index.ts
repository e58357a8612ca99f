export { JobsModule } from './jobs.module.js';
export { type AcceptedWork, JobsService } from './jobs.service.js';
export { ChargeJob } from './charge-job.js';
export { ChangeJobState } from './change-job-state.js';
export { ReasonBody } from './reason.dto.js';
export type { JobEntity, JobState } from './job.entity.js';
export type { JobPlanEntity } from './job-plan.entity.js';
export type { PlannedWork } from './job-plan.js';
