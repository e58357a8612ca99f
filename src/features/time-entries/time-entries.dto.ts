import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { CostCodeField, IdField, InstantField, IntegerField, MoneyBody, OwnIdField, TextField } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';

const MINUTES_A_DAY = 24 * 60;

export class TimeEntriesQuery extends ListQuery {
  @IdFilter('Only hours of this job.')
  jobId?: string;

  @IdFilter('Only hours of this person; crew may only ask for their own.')
  personId?: string;
}

@ApiSchema({ name: 'TimeEntryInput' })
export class TimeEntryBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'The job: planned or under way.' })
  jobId: string;

  @IdField({ description: 'Who worked; crew may only log themselves.' })
  personId: string;

  @CostCodeField({ description: 'One of the job\'s `costCodes`.' })
  costCode: string;

  @InstantField({ description: 'When the work started.' })
  startedAt: string;

  @InstantField({ description: 'When the work ended: after the start, and at most 24 hours later.', example: '2027-04-12T16:00:00-04:00' })
  endedAt: string;

  @IntegerField({ description: 'Whole minutes of the time that are not paid; 0 unless told, at most as long as the work.', min: 0, max: MINUTES_A_DAY, optional: true, default: 0, example: 30 })
  unpaidBreakMinutes?: number | null;

  @TextField({ description: 'What is worth knowing about it.', max: 1000, multiline: true, optional: true, example: 'Bottom is softer than probed near the inlet' })
  note?: string | null;
}

@ApiSchema({ name: 'TimeEntry', description: 'Who worked on which job and cost code, from when to when. What it costs is only for owner and estimator.' })
export class TimeEntryView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The entry.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job.' })
  jobId: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'Who worked.' })
  personId: string;

  @ApiProperty({ type: 'string', description: 'The cost code that the hours are charged to.' })
  costCode: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the work started.' })
  startedAt: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the work ended.' })
  endedAt: string;

  @ApiProperty({ type: 'integer', description: 'Minutes of it that are not paid.' })
  unpaidBreakMinutes: number;

  @ApiProperty({ type: 'string', description: 'Minutes to be paid, as a decimal string: elapsed less the break, not rounded to quarters; to four decimals when there are seconds.', example: '480' })
  paidMinutes: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'What is worth knowing about it.' })
  note: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'Who entered it.' })
  recordedBy: string;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was voided; a voided entry counts for nothing.' })
  voidedAt: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'Why it was voided.' })
  voidReason: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When it was entered.' })
  createdAt: string;

  @ApiProperty({ type: () => MoneyBody, required: false, description: 'Paid time × the person\'s wage when it was entered, and the burden on it; rounded half up. A job\'s labor cost is rounded once on the sum, so it may differ from the sum of these by cents.' })
  laborCost?: MoneyBody;
}
