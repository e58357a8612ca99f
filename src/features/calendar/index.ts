export { CalendarModule } from './calendar.module.js';
