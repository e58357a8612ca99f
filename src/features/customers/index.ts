export { CustomersModule } from './customers.module.js';
export { CustomersService } from './customers.service.js';
export type { CustomerEntity } from './customer.entity.js';
export type { CustomerBody } from './customers.dto.js';
