import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ChoiceField, DecimalField, LocalDateField, OwnIdField, TextField } from '../../../platform/http/fields/index.js';
import { type Weekday, WEEKDAYS } from '../work-calendar.js';

const TIME_OF_DAY = { test: /^([01][0-9]|2[0-3]):[0-5][0-9]$/, says: 'must be a time of day written as hh:mm, such as 06:00' };

@ApiSchema({ name: 'WorkWeekPolicyInput' })
export class WorkWeekPolicyBody {
  @OwnIdField()
  id?: string | null;

  @ChoiceField({ description: 'The weekday that a workweek begins on. All policies of a company name the same: a workweek stays as it was set (29 CFR 778.105).', of: WEEKDAYS, example: 'monday' })
  startsOn: Weekday;

  @TextField({ description: 'The time of day, in the company\'s zone, at which workweeks and workdays begin; alike in all policies.', max: 5, pattern: TIME_OF_DAY, example: '00:00' })
  startsAt: string;

  @DecimalField({ description: 'Hours in a workweek beyond which overtime is due: 40 by US federal law. 169 is never.', min: '0', max: '169', scale: 4, example: '40' })
  weeklyOvertimeHours: string;

  @DecimalField({ description: 'Hours in a workday beyond which overtime is due, where a state or the company has such a rule; federal law has none.', min: '0', max: '25', scale: 4, optional: true, example: '8' })
  dailyOvertimeHours?: string | null;

  @LocalDateField({ description: 'The hours apply to workweeks that begin on this day or later.' })
  effectiveFrom: string;
}

@ApiSchema({ name: 'WorkWeekPolicy', description: 'When workweeks begin and from how many hours on overtime is due. Without any, weeks begin on Monday at 00:00 and overtime is due beyond 40 hours.' })
export class WorkWeekPolicyView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The policy.' })
  id: string;

  @ApiProperty({ type: 'string', enum: [...WEEKDAYS], description: 'The weekday that a workweek begins on.' })
  startsOn: Weekday;

  @ApiProperty({ type: 'string', description: 'The time of day, in the company\'s zone, at which workweeks and workdays begin.', example: '00:00' })
  startsAt: string;

  @ApiProperty({ type: 'string', description: 'Hours in a workweek beyond which overtime is due.' })
  weeklyOvertimeHours: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'Hours in a workday beyond which overtime is due; null for no such rule.' })
  dailyOvertimeHours: string | null;

  @ApiProperty({ type: 'string', format: 'date', description: 'The hours apply to workweeks that begin on this day or later.' })
  effectiveFrom: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the policy was made; of two with the same `effectiveFrom`, the one made last is in force.' })
  createdAt: string;
}
