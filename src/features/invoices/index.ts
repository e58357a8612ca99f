export { InvoicesModule } from './invoices.module.js';
export { InvoicesService } from './invoices.service.js';
export type { InvoiceEntity } from './invoice.entity.js';
export type { FiguresOfJob } from './invoices.repository.js';
