import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { VISIT_STATES, type VisitState } from './visit.entity.js';

export const VISIT_WARNINGS = ['double-booked', 'day-off', 'blocked', 'not-active', 'not-on-crew', 'job-closed'] as const;
export type VisitWarningCode = (typeof VISIT_WARNINGS)[number];

@ApiSchema({ name: 'VisitWarning', description: 'Something that speaks against a visit as it is planned. It is told, never refused.' })
export class VisitWarningView {
  @ApiProperty({ type: 'string', enum: VISIT_WARNINGS, description: 'double-booked: the person is planned elsewhere at that time; day-off: the person has a day off; blocked: something must be out of the way first; not-active: the person does not work here any more; not-on-crew: the person was taken off the job\'s crew, so their phone does not keep it; job-closed: the job is finished or cancelled.' })
  code: VisitWarningCode;

  @ApiProperty({ type: 'string', description: 'What it is, and what to do.' })
  detail: string;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The person concerned.' })
  personId: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The other visit at that time.' })
  visitId: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The blocker.' })
  blockerId: string | null;
}

@ApiSchema({ name: 'PlannedVisit', description: 'A stay of some people at the site of a job, as phones keep it.' })
export class PlannedVisitView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The visit.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job.' })
  jobId: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'The day, in the site\'s time zone.' })
  day: string;

  @ApiProperty({ type: 'string', description: 'When it starts, HH:MM by the site\'s clocks.', example: '07:30' })
  startTime: string;

  @ApiProperty({ type: 'integer', description: 'How many minutes it takes.' })
  lengthMinutes: number;

  @ApiProperty({ type: 'string', description: 'The IANA time zone of the site.', example: 'America/Detroit' })
  timeZone: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'The instant at which it starts.' })
  startsAt: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'The instant at which it ends.' })
  endsAt: string;

  @ApiProperty({ type: 'array', items: { type: 'string', format: 'uuid' }, description: 'Who comes.' })
  personIds: string[];

  @ApiProperty({ type: 'string', isArray: true, description: 'What to bring.' })
  bring: string[];

  @ApiProperty({ type: 'string', nullable: true, description: 'What is to be done, or worth knowing.' })
  note: string | null;

  @ApiProperty({ type: 'string', enum: VISIT_STATES, description: 'Whether it is on.' })
  state: VisitState;

  @ApiProperty({ type: 'string', nullable: true, description: 'Why it is off.' })
  cancelReason: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When it was planned first.' })
  createdAt: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'The last change of it or of who comes.' })
  changedAt: string;
}

@ApiSchema({ name: 'Visit', description: 'A stay of some people at the site of a job, with what speaks against it.' })
export class VisitView extends PlannedVisitView {
  @ApiProperty({ type: () => [VisitWarningView], description: 'What speaks against it as it is planned now; none for a cancelled visit.' })
  warnings: VisitWarningView[];
}
