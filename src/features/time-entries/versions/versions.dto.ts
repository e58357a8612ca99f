import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { HELD_REASONS, type HeldReason } from '../held/held-because.js';
import { BreakBody } from '../time-entries.dto.js';
import { TIME_KINDS, type TimeKind } from '../time-entry.entity.js';

@ApiSchema({ name: 'TimeEntryVersion', description: 'An entry as it once stood, with who made it so, when and why.' })
export class TimeEntryVersionView {
  @ApiProperty({ type: 'integer', description: 'The version: what the ETag was.' })
  version: number;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When this version was made.' })
  changedAt: string;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'Who made this version; null for the service itself.' })
  changedBy: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'Why, if that was told.' })
  reason: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job.' })
  jobId: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'Who worked.' })
  personId: string;

  @ApiProperty({ type: 'string', description: 'The cost code.' })
  costCode: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the work started.' })
  startedAt: string;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When the work ended; null while it ran.' })
  endedAt: string | null;

  @ApiProperty({ type: 'string', enum: [...TIME_KINDS], description: 'Work or travel.' })
  kind: TimeKind;

  @ApiProperty({ type: 'integer', description: 'Minutes that are not paid, beside `breaks`.' })
  unpaidBreakMinutes: number;

  @ApiProperty({ type: [BreakBody], description: 'Breaks taken down one by one.' })
  breaks: BreakBody[];

  @ApiProperty({ type: 'string', nullable: true, description: 'What is worth knowing about it.' })
  note: string | null;

  @ApiProperty({ type: 'boolean', description: 'Whether it waited for the office to release it.' })
  held: boolean;

  @ApiProperty({ type: 'string', enum: [...HELD_REASONS], isArray: true, description: 'Why it waited.' })
  heldBecause: HeldReason[];

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was approved.' })
  approvedAt: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was voided.' })
  voidedAt: string | null;
}

@ApiSchema({ name: 'TimeEntryVersions' })
export class TimeEntryVersionsView {
  @ApiProperty({ type: [TimeEntryVersionView], description: 'The versions, newest first; the latest 200.' })
  items: TimeEntryVersionView[];
}
