export { WorkWeeksModule } from './work-weeks.module.js';
export { WorkWeeksService } from './work-weeks.service.js';
