export { DayModule } from './day.module.js';
