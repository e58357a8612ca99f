export { CalculationsModule } from './calculations.module.js';
export { haulHours } from './topics/sediment/haul-cycle.js';
export { HaulCycleBody, type HaulCycleView, HoursBandView } from './topics/sediment/haul-cycle.dto.js';
