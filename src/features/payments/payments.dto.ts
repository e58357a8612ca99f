import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ChoiceField, IdField, LocalDateField, MoneyBody, MoneyField, OwnIdField, TextField } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';
import { PAYMENT_METHODS, type PaymentMethod } from './payment.entity.js';

@ApiSchema({ name: 'PaymentInput' })
export class PaymentBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'The invoice that is paid; it must be issued and not yet paid in full.' })
  invoiceId: string;

  @MoneyField({ description: 'What came in, with tax, in the currency of the invoice; more than 0 and at most the balance.', sign: 'positive' })
  amount: MoneyBody;

  @LocalDateField({ description: 'The day on which it came in.' })
  receivedOn: string;

  @ChoiceField({ description: 'How it was paid.', of: PAYMENT_METHODS, example: 'check' })
  method: PaymentMethod;

  @TextField({ description: 'The number of the check or transfer, or whatever finds it again.', max: 100, optional: true, example: 'Check 2041' })
  reference?: string | null;
}

export class PaymentsQuery extends ListQuery {
  @IdFilter('Only the payments of this invoice.')
  invoiceId?: string;
}

@ApiSchema({ name: 'Payment', description: 'Money that came in for an invoice. It never changes; a wrong one is voided.' })
export class PaymentView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The payment.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The invoice that it pays.' })
  invoiceId: string;

  @ApiProperty({ type: MoneyBody, description: 'What came in, with tax.' })
  amount: MoneyBody;

  @ApiProperty({ type: 'string', format: 'date', description: 'The day on which it came in.' })
  receivedOn: string;

  @ApiProperty({ type: 'string', enum: PAYMENT_METHODS, description: 'How it was paid.' })
  method: PaymentMethod;

  @ApiProperty({ type: 'string', nullable: true, description: 'The number of the check or transfer, or whatever finds it again.' })
  reference: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was voided; from then on it does not count.' })
  voidedAt: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'Why it was voided.' })
  voidReason: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When it was entered.' })
  createdAt: string;
}
