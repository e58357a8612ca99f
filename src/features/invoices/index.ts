export { InvoicesModule } from './invoices.module.js';
export { InvoicesService } from './invoices.service.js';
export { DraftInvoice } from './draft-invoice.js';
export { IssueInvoice } from './issue-invoice.js';
export type { InvoiceEntity } from './invoice.entity.js';
export type { FiguresOfJob } from './invoices.repository.js';
