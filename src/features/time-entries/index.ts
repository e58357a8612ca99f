export { TimeEntriesModule } from './time-entries.module.js';
export { TimeEntriesService } from './time-entries.service.js';
export { LogTime } from './log/log-time.js';
export type { TimeEntryBody } from './time-entries.dto.js';
export type { LaborOnCostCode } from './time-entries.repository.js';
export { type HoursToLog, type Logged, LogManyHours } from './log/log-many-hours.js';
