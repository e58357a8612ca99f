import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { MoneyBody } from '../../platform/http/fields/index.js';
import { INVOICE_STATES, type InvoiceState } from './invoice.entity.js';

@ApiSchema({ name: 'InvoiceTax', description: 'The tax of one category, on the sum of its lines.' })
export class InvoiceTaxView {
  @ApiProperty({ type: 'string', description: 'The code of the tax category.' })
  category: string;

  @ApiProperty({ type: 'string', description: 'The name on documents.' })
  name: string;

  @ApiProperty({ type: 'string', description: 'The rate in percent, as a decimal string.', example: '6.25' })
  rate: string;

  @ApiProperty({ type: MoneyBody, description: 'The sum of the lines that are taxed so.' })
  base: MoneyBody;

  @ApiProperty({ type: MoneyBody, description: 'The tax on that sum.' })
  tax: MoneyBody;
}

@ApiSchema({ name: 'InvoiceLine', description: 'A line as it was accepted: quantity × unit price, rounded half up, is the amount.' })
export class InvoiceLineView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The line.' })
  id: string;

  @ApiProperty({ type: 'string', enum: ['labor', 'part', 'other'], description: 'What is billed: labor, a part of the catalog, or anything else.' })
  kind: 'labor' | 'part' | 'other';

  @ApiProperty({ type: 'string', description: 'The cost code.' })
  costCode: string;

  @ApiProperty({ type: 'string', description: 'What the customer reads.' })
  description: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'How many, as a decimal string, in `unit`; hours for labor.' })
  quantity: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The unit of `quantity`.' })
  unit: string | null;

  @ApiProperty({ type: MoneyBody, description: 'The price of one unit, net; of an hour for labor. It may have more decimals than the currency.' })
  unitPrice: MoneyBody;

  @ApiProperty({ type: MoneyBody, description: 'The amount, net.' })
  amount: MoneyBody;

  @ApiProperty({ type: 'string', nullable: true, description: 'The tax category; null for an untaxed line.' })
  taxCategory: string | null;
}

@ApiSchema({ name: 'InvoiceSummary', description: 'An invoice without its lines, as lists give it.' })
export class InvoiceSummaryView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The invoice.' })
  id: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'The number, without gaps within the company; null until the invoice is issued.', example: 'INV-1001' })
  number: string | null;

  @ApiProperty({ type: 'string', enum: INVOICE_STATES, description: 'How far it is.' })
  state: InvoiceState;

  @ApiProperty({ type: 'string', enum: ['final'], description: 'What is billed.' })
  basis: 'final';

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job that is billed.' })
  jobId: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The quote whose lines are billed.' })
  quoteId: string;

  @ApiProperty({ type: 'integer', description: 'The accepted revision of that quote.' })
  quoteRevision: number;

  @ApiProperty({ type: 'string', description: 'What the work is called.' })
  title: string;

  @ApiProperty({ type: 'string', description: 'The currency, by its ISO 4217 letters.' })
  currency: string;

  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The day of issue, in the company\'s time zone.' })
  issuedOn: string | null;

  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The day by which it is to be paid: the day of issue plus the company\'s payment terms.' })
  dueOn: string | null;

  @ApiProperty({ type: MoneyBody, description: 'The sum of the lines.' })
  netTotal: MoneyBody;

  @ApiProperty({ type: [InvoiceTaxView], description: 'The taxes, one for each category that has lines.' })
  taxes: InvoiceTaxView[];

  @ApiProperty({ type: MoneyBody, description: 'The net total and the taxes.' })
  grossTotal: MoneyBody;

  @ApiProperty({ type: MoneyBody, description: 'The payments so far, without voided ones.' })
  paidTotal: MoneyBody;

  @ApiProperty({ type: MoneyBody, description: 'What is still owed: the gross total less the payments; zero once the invoice is void.' })
  balanceDue: MoneyBody;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was voided.' })
  voidedAt: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'Why it was voided.' })
  voidReason: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the draft was made.' })
  createdAt: string;
}

@ApiSchema({ name: 'Invoice', description: 'What a customer is asked to pay for a job. Once issued it never changes, but for payments and for being voided.' })
export class InvoiceView extends InvoiceSummaryView {
  @ApiProperty({ type: [InvoiceLineView], description: 'The lines, in the order of the quote.' })
  lines: InvoiceLineView[];
}
