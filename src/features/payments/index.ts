export { PaymentsModule } from './payments.module.js';
export { PaymentsService } from './payments.service.js';
export type { PaymentBody } from './payments.dto.js';
