export { TimeEntriesModule } from './time-entries.module.js';
export { TimeEntriesService } from './time-entries.service.js';
export { LogTime } from './log/log-time.js';
export type { TimeEntryBody } from './time-entries.dto.js';
export { LoggedWorkModule } from './logged-work.module.js';
export { type LoggedWork, LoggedWorkRepository } from './logged-work.repository.js';
export { type PaidSum, type PersonSpan, type WorkSum, WorkSumsRepository } from './work-sums.repository.js';
export { type HoursToLog, type Logged, LogManyHours } from './log/log-many-hours.js';
