import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ChoiceField, IdField, LocalDateField, OwnIdField, TextField } from '../../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../../platform/http/lists.js';
import { BLOCKER_KINDS, type BlockerKind } from './blocker.entity.js';

@ApiSchema({ name: 'BlockerInput' })
export class BlockerBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'The job that waits for it.' })
  jobId: string;

  @ChoiceField({ description: 'What it is: a locate of buried utilities before digging, a permit, materials on order, or another thing.', of: BLOCKER_KINDS })
  kind: BlockerKind;

  @LocalDateField({ description: 'The day it was asked for; none when nobody has asked yet.', optional: true, example: '2027-04-05' })
  requestedOn?: string | null;

  @LocalDateField({ description: 'The day it is expected to be out of the way; none when nobody knows.', optional: true, example: '2027-04-08' })
  clearOn?: string | null;

  @LocalDateField({ description: 'The day from which it really is out of the way; none while it is outstanding.', optional: true, example: '2027-04-08' })
  clearedOn?: string | null;

  @LocalDateField({ description: 'The last day on which the clearance holds, such as that of a locate\'s marks; none when it does not lapse.', optional: true, example: '2027-04-28' })
  validUntil?: string | null;

  @TextField({ description: 'The number of the ticket, permit or order.', max: 120, optional: true, example: 'Ticket 2027-00417' })
  reference?: string | null;

  @TextField({ description: 'What is worth knowing.', max: 2000, multiline: true, optional: true, example: 'Gas and cable answered; water is still open.' })
  note?: string | null;
}

@ApiSchema({ name: 'Blocker', description: 'Something that must be out of the way before the crew can work.' })
export class BlockerView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The blocker.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job that waits for it.' })
  jobId: string;

  @ApiProperty({ type: 'string', enum: BLOCKER_KINDS, description: 'What it is.' })
  kind: BlockerKind;

  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The day it was asked for.' })
  requestedOn: string | null;

  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The day it is expected to be out of the way.' })
  clearOn: string | null;

  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The day from which it is out of the way.' })
  clearedOn: string | null;

  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The last day on which the clearance holds.' })
  validUntil: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The number of the ticket, permit or order.' })
  reference: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'What is worth knowing.' })
  note: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'What to heed. It helps the crew prepare; local law and the utilities\' own word come first.' })
  caution: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was withdrawn; then it holds up nothing.' })
  withdrawnAt: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When it was entered.' })
  createdAt: string;
}

export class BlockersQuery extends ListQuery {
  @IdFilter('Only those of this job.')
  jobId?: string;
}
