export { DemonstrationModule } from './demonstration.module.js';
export { Demonstration } from './demonstration.js';
