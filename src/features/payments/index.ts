export { PaymentsModule } from './payments.module.js';
