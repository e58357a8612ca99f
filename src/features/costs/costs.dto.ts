import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ChoiceField, CostCodeField, IdField, LocalDateField, MoneyBody, MoneyField, OwnIdField, TextField } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';
import { COST_KINDS, type CostKind } from './cost.entity.js';

export class CostsQuery extends ListQuery {
  @IdFilter('Only costs of this job.')
  jobId?: string;
}

@ApiSchema({ name: 'CostInput' })
export class CostBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'The job: any but a cancelled one.' })
  jobId: string;

  @CostCodeField({ description: 'The bucket of work that it is charged to; it need not be in the job\'s plan.' })
  costCode: string;

  @ChoiceField({ description: 'What was paid for.', of: COST_KINDS, example: 'disposal' })
  kind: CostKind;

  @TextField({ description: 'What it was.', max: 500, example: 'Sediment to the compost yard, two loads' })
  description: string;

  @MoneyField({ description: 'What it cost, in the company\'s currency; below zero for a supplier\'s credit, never zero.' })
  amount: MoneyBody;

  @LocalDateField({ description: 'The day on which it was incurred, as on the ticket or bill.' })
  incurredOn: string;

  @TextField({ description: 'Who was paid.', max: 200, optional: true, example: 'Tallgrass Compost Yard' })
  supplier?: string | null;

  @TextField({ description: 'The number on the ticket or bill.', max: 100, optional: true, example: 'T-20718' })
  reference?: string | null;

  @IdField({ description: 'The attachment that shows the ticket or bill.', optional: true })
  receiptId?: string | null;
}

@ApiSchema({ name: 'Cost', description: 'What was bought for a job, or credited by a supplier.' })
export class CostView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The cost.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job.' })
  jobId: string;

  @ApiProperty({ type: 'string', description: 'The cost code that it is charged to.' })
  costCode: string;

  @ApiProperty({ type: 'string', enum: COST_KINDS, description: 'What was paid for.' })
  kind: CostKind;

  @ApiProperty({ type: 'string', description: 'What it was.' })
  description: string;

  @ApiProperty({ type: () => MoneyBody, description: 'What it cost; below zero for a supplier\'s credit.' })
  amount: MoneyBody;

  @ApiProperty({ type: 'string', format: 'date', description: 'The day on which it was incurred.' })
  incurredOn: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'Who was paid.' })
  supplier: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The number on the ticket or bill.' })
  reference: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The attachment that shows the ticket or bill.' })
  receiptId: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was voided; a voided cost counts for nothing.' })
  voidedAt: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'Why it was voided.' })
  voidReason: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When it was entered.' })
  createdAt: string;
}
