import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { IdField, LocalDateField, MoneyBody, MoneyField, OwnIdField } from '../../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../../platform/http/lists.js';

@ApiSchema({ name: 'OpeningWagesInput' })
export class OpeningWagesBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'Who earned them; once for each calendar year.' })
  personId: string;

  @LocalDateField({ description: 'The last day that the amounts are for. They begin with its year, and hours that are kept here up to this day are among them.' })
  through: string;

  @MoneyField({ description: 'All wages from the beginning of the year to that day, in the company\'s currency. Less than what the hours kept here come to counts for nothing, and so does 0.', sign: 'not-negative' })
  allPay: MoneyBody;

  @MoneyField({ description: 'What of it was not the premium of overtime: for burden that is counted on straight pay. All of it unless told.', sign: 'not-negative', optional: true })
  straightPay?: MoneyBody | null;
}

export class OpeningWagesQuery extends ListQuery {
  @IdFilter('Only those of this person.')
  personId?: string;
}

@ApiSchema({ name: 'OpeningWages', description: 'What a person had earned in a calendar year up to a day, before the company kept its hours here. Yearly caps of burden start from it.' })
export class OpeningWagesView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'These opening wages.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'Who earned them.' })
  personId: string;

  @ApiProperty({ type: 'integer', description: 'The calendar year.', example: 2027 })
  year: number;

  @ApiProperty({ type: 'string', format: 'date', description: 'The last day that the amounts are for.' })
  through: string;

  @ApiProperty({ type: () => MoneyBody, description: 'All wages of the year up to that day.' })
  allPay: MoneyBody;

  @ApiProperty({ type: () => MoneyBody, description: 'What of it was not the premium of overtime.' })
  straightPay: MoneyBody;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When they were entered.' })
  createdAt: string;
}
