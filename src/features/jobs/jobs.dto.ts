import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ChoiceField, MoneyBody } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';
import { JOB_STATES, type JobState } from './job.entity.js';

export class JobsQuery extends ListQuery {
  @ChoiceField({ description: 'Only jobs in this state.', of: JOB_STATES, optional: true })
  state?: JobState;

  @IdFilter('Only jobs at this site.')
  siteId?: string;

  @IdFilter('Only the job of this quote.')
  quoteId?: string;
}

@ApiSchema({ name: 'PlannedHours', description: 'The labor that the accepted quote planned for a cost code.' })
export class PlannedHoursView {
  @ApiProperty({ type: 'string', description: 'The cost code.', example: 'cleanout' })
  costCode: string;

  @ApiProperty({ type: 'string', description: 'Hours, as a decimal string.', example: '20.5' })
  hours: string;
}

@ApiSchema({ name: 'Job', description: 'Accepted work. The contract\'s money is only for owner and estimator.' })
export class JobView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'The number that people say, such as J-1001.', example: 'J-1001' })
  number: string;

  @ApiProperty({ type: 'string', enum: JOB_STATES, description: 'How far it is. The first hour logged starts a planned job.' })
  state: JobState;

  @ApiProperty({ type: 'string', description: 'What is to be done: the title of the quote.' })
  title: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The quote that was accepted.' })
  quoteId: string;

  @ApiProperty({ type: 'integer', description: 'The revision of the quote that was accepted.' })
  quoteRevision: number;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The customer.' })
  customerId: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The site.' })
  siteId: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The pond, stream or waterfall.' })
  featureId: string | null;

  @ApiProperty({ type: 'string', description: 'The IANA time zone in which the days of the job are counted.', example: 'America/Detroit' })
  timeZone: string;

  @ApiProperty({ type: () => [PlannedHoursView], description: 'The labor planned for each cost code, in the quote\'s order; codes without planned hours are left out.' })
  plannedHours: PlannedHoursView[];

  @ApiProperty({ type: 'string', isArray: true, description: 'All cost codes that hours and costs of the job may be charged to.', example: ['cleanout', 'edge', 'travel', 'yard', 'warranty'] })
  costCodes: string[];

  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The day of the earliest hour, or on which the job was started, in its time zone.' })
  startedOn: string | null;

  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The day on which the job was finished, in its time zone.' })
  finishedOn: string | null;

  @ApiProperty({ type: 'string', format: 'date', nullable: true, description: 'The day on which the job was cancelled, in its time zone.' })
  cancelledOn: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'Why the job was cancelled.' })
  cancelReason: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the quote was accepted here.' })
  createdAt: string;

  @ApiProperty({ type: () => MoneyBody, required: false, description: 'The price agreed, net of tax.' })
  contractTotal?: MoneyBody;

  @ApiProperty({ type: () => MoneyBody, required: false, description: 'The tax on it.' })
  contractTax?: MoneyBody;
}
