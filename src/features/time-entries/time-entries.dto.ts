import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { BooleanField, ChoiceField, CostCodeField, IdField, InstantField, IntegerField, ListField, MoneyBody, OwnIdField, TextField } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';
import { HELD_REASONS, type HeldReason } from './held/held-because.js';
import { TIME_KINDS, type TimeKind } from './time-entry.entity.js';

const MINUTES_A_DAY = 24 * 60;
export const MOST_BREAKS = 20;

const UNPAID_MINUTES = { description: 'Whole minutes of the time that are not paid, beside `breaks`; 0 unless told, at most as long as the work.', min: 0, max: MINUTES_A_DAY, optional: true, default: 0, example: 30 };
const BREAKS = { description: 'Breaks taken down one by one, in their order, within the work.', most: MOST_BREAKS, optional: true };
const RECORDED_AT = { description: 'When it was taken down, by the clock of the device.', optional: true };
const SENT_AT = { description: 'The time of the device when it sends this. Only to see how far its clock is off; a repeated request may carry another one.', optional: true };

export class TimeEntriesQuery extends ListQuery {
  @IdFilter('Only hours of this job.')
  jobId?: string;

  @IdFilter('Only hours of this person; crew may only ask for their own.')
  personId?: string;

  @ChoiceField({ description: 'Only hours that wait for the office to release them, or only the others.', of: ['true', 'false'], optional: true })
  held?: 'true' | 'false';
}

@ApiSchema({ name: 'Break', description: 'A pause in work.' })
export class BreakBody {
  @InstantField({ description: 'When the break started.', example: '2027-04-12T12:00:00-04:00' })
  startedAt: string;

  @InstantField({ description: 'When the break ended.', example: '2027-04-12T12:30:00-04:00' })
  endedAt: string;

  @BooleanField({ description: 'Whether the break is paid. An unpaid one under 20 minutes counts as work all the same.', example: false })
  paid: boolean;
}

/** What hours have in common, however they come in. */
class HoursBody {
  @IdField({ description: 'The job. For one that is finished or cancelled the hours are kept as `held`.' })
  jobId: string;

  @IdField({ description: 'Who worked; crew may only log themselves.' })
  personId: string;

  @CostCodeField({ description: 'One of the job\'s `costCodes`.' })
  costCode: string;

  @InstantField({ description: 'When the work started.' })
  startedAt: string;

  @ChoiceField({ description: 'Work on the site, or travel between places of work; `work` unless told.', of: TIME_KINDS, optional: true, default: 'work' })
  kind?: TimeKind | null;

  @TextField({ description: 'What is worth knowing about it.', max: 1000, multiline: true, optional: true, example: 'Bottom is softer than probed near the inlet' })
  note?: string | null;
}

/** When hours ended, and what of them is not paid. */
class EndedHoursBody extends HoursBody {
  @InstantField({ description: 'When the work ended: after the start, and at most 24 hours later. Left out, the hours run until they are stopped; a person has one running entry at most.', example: '2027-04-12T16:00:00-04:00', optional: true })
  endedAt?: string | null;

  @IntegerField(UNPAID_MINUTES)
  unpaidBreakMinutes?: number | null;

  @ListField(() => BreakBody, BREAKS)
  breaks?: BreakBody[] | null;
}

@ApiSchema({ name: 'TimeEntryInput' })
export class TimeEntryBody extends EndedHoursBody {
  @OwnIdField()
  id?: string | null;

  @InstantField(RECORDED_AT)
  recordedAt?: string | null;

  @InstantField(SENT_AT)
  sentAt?: string | null;
}

@ApiSchema({ name: 'TimeEntryStart', description: 'Hours that start now and are stopped later.' })
export class TimeEntryStartBody extends HoursBody {
  @OwnIdField()
  id?: string | null;
}

@ApiSchema({ name: 'TimeEntryStop' })
export class StopTimeBody {
  @InstantField({ description: 'When the work ended; the present moment unless told.', optional: true, example: '2027-04-12T16:00:00-04:00' })
  endedAt?: string | null;

  @IntegerField(UNPAID_MINUTES)
  unpaidBreakMinutes?: number | null;

  @ListField(() => BreakBody, BREAKS)
  breaks?: BreakBody[] | null;
}

@ApiSchema({ name: 'TimeEntryCorrection' })
export class TimeEntryCorrectionBody extends EndedHoursBody {
  @TextField({ description: 'Why it is corrected; needed once the hours are approved, and for a job that is finished or cancelled.', max: 500, optional: true, example: 'The truck was stuck until five' })
  reason?: string | null;
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

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When the work ended; null while it runs.' })
  endedAt: string | null;

  @ApiProperty({ type: 'string', enum: [...TIME_KINDS], description: 'Work on the site, or travel between places of work.' })
  kind: TimeKind;

  @ApiProperty({ type: 'integer', description: 'Minutes of it that are not paid, beside `breaks`.' })
  unpaidBreakMinutes: number;

  @ApiProperty({ type: [BreakBody], description: 'Breaks taken down one by one.' })
  breaks: BreakBody[];

  @ApiProperty({ type: 'string', nullable: true, description: 'Minutes to be paid, null while it runs; as a decimal string: elapsed less the breaks, not rounded to quarters; to four decimals when there are seconds.', example: '480' })
  paidMinutes: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'What is worth knowing about it.' })
  note: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'Who entered it.' })
  recordedBy: string;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When the device took it down, by its own clock.' })
  recordedAt: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the service got it.' })
  receivedAt: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'Seconds by which the clock of the device was ahead of the service\'s, as a decimal string; null when it did not tell its time.', example: '-3.2' })
  clockSkewSeconds: string | null;

  @ApiProperty({ type: 'boolean', description: 'Whether it waits for the office to release it. Such hours count for nothing until then.' })
  held: boolean;

  @ApiProperty({ type: 'string', enum: [...HELD_REASONS], isArray: true, description: 'Why it is held: its day was locked, its job finished or cancelled, or the person not active any more, when it came in. Empty when it counts.' })
  heldBecause: HeldReason[];

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was approved; a correction takes the approval away.' })
  approvedAt: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'Who approved it.' })
  approvedBy: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was voided; a voided entry counts for nothing.' })
  voidedAt: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'Why it was voided.' })
  voidReason: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When it was entered.' })
  createdAt: string;

  @ApiProperty({ type: [String], description: 'What somebody should look at: a clock that is off, a rest that is too short to be unpaid, hours that are held.' })
  warnings: string[];

  @ApiProperty({ type: () => MoneyBody, required: false, description: 'Absent while it runs. Paid time × the person\'s wage when it was entered, and the burden on it; rounded half up. Without overtime and yearly caps, which depend on the whole week: a job\'s labor cost has them, and `GET /v1/work-weeks` shows the part that each entry carries.' })
  laborCost?: MoneyBody;
}
