import { ApiSchema } from '@nestjs/swagger';
import { ChoiceField, IdField, OwnIdField } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';
import { INVOICE_STATES, type InvoiceState } from './invoice.entity.js';

@ApiSchema({ name: 'InvoiceInput' })
export class InvoiceBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'The job that is billed.' })
  jobId: string;

  @ChoiceField({ description: 'What is billed: `final` is the whole accepted quote. A job has one such invoice that is not void.', of: ['final'], example: 'final' })
  basis: 'final';
}

export class InvoicesQuery extends ListQuery {
  @IdFilter('Only the invoices of this job.')
  jobId?: string;

  @ChoiceField({ description: 'Only the invoices in this state.', of: INVOICE_STATES, optional: true })
  state?: InvoiceState;
}
