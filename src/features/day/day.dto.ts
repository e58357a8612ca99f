import { ApiProperty } from '@nestjs/swagger';
import { IsOptional, IsUUID } from 'class-validator';
import { LocalDateField } from '../../platform/http/fields/index.js';

export class DayQuery {
  @ApiProperty({ type: 'string', format: 'uuid', required: false, description: 'Whose day; your own unless told. Crew may only ask for their own.' })
  @IsUUID('all', { message: 'must be the id (a UUID) of a person' })
  @IsOptional()
  personId?: string;

  @LocalDateField({ description: 'The day, counted at each site in its own zone; today in the company\'s unless told.', optional: true })
  date?: string;
}
