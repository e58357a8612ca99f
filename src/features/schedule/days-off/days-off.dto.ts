import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { IdField, LocalDateField, OwnIdField, TextField } from '../../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../../platform/http/lists.js';

@ApiSchema({ name: 'DaysOffInput' })
export class DaysOffBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'Who does not work; crew may only enter their own.' })
  personId: string;

  @LocalDateField({ description: 'The first day.', example: '2027-07-05' })
  firstDay: string;

  @LocalDateField({ description: 'The last day; the first one unless told, at most a year later.', optional: true, example: '2027-07-09' })
  lastDay?: string | null;

  @TextField({ description: 'What is worth knowing; the person and leads see it.', max: 500, multiline: true, optional: true, example: 'Back on Monday' })
  note?: string | null;
}

@ApiSchema({ name: 'DaysOff', description: 'Days on which a person does not work.' })
export class DaysOffView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The days off.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'Who does not work.' })
  personId: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'The first day.' })
  firstDay: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'The last day.' })
  lastDay: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'What is worth knowing.' })
  note: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When they were withdrawn; then they count for nothing.' })
  withdrawnAt: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When they were entered.' })
  createdAt: string;
}

export class DaysOffQuery extends ListQuery {
  @IdFilter('Only those of this person; crew may only ask for their own.')
  personId?: string;
}
