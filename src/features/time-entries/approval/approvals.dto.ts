import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { IdField, LocalDateField, TextField } from '../../../platform/http/fields/index.js';
import { TimeEntryView } from '../time-entries.dto.js';

@ApiSchema({ name: 'TimeApprovalInput' })
export class TimeApprovalBody {
  @IdField({ description: 'Whose hours.' })
  personId: string;

  @LocalDateField({ description: 'The day, in the company\'s zone, on which the hours start.' })
  day: string;
}

@ApiSchema({ name: 'TimeApprovalWithdrawal' })
export class WithdrawApprovalBody extends TimeApprovalBody {
  @TextField({ description: 'Why the approval is taken back.', max: 500, example: 'The travel home is missing' })
  reason: string;
}

@ApiSchema({ name: 'TimeApproval', description: 'A day of a person.' })
export class TimeApprovalView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'Whose hours.' })
  personId: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'The day, in the company\'s zone.' })
  day: string;

  @ApiProperty({ type: 'boolean', description: 'Whether there are hours and all of them are approved. Hours that run still or are held can not be.' })
  complete: boolean;

  @ApiProperty({ type: [TimeEntryView], description: 'The hours of the day that are not void, earliest first.' })
  entries: TimeEntryView[];
}
