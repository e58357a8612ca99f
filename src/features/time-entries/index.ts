export { TimeEntriesModule } from './time-entries.module.js';
export { TimeEntriesService } from './time-entries.service.js';
export type { LaborOnCostCode } from './time-entries.repository.js';
