import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { LocalDateField, MoneyBody } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';
import { WorkingView } from '../../platform/http/working.view.js';

export class WorkWeeksQuery extends ListQuery {
  @LocalDateField({ description: 'A day of the week asked for; today unless told.', optional: true })
  of?: string;

  @IdFilter('Only this person.')
  personId?: string;
}

@ApiSchema({ name: 'WorkedHours', description: 'Hours with their working.' })
export class WorkedHoursView {
  @ApiProperty({ type: 'string', description: 'The hours as a decimal string, to four decimals.', example: '46' })
  hours: string;

  @ApiProperty({ type: () => WorkingView, description: 'How they came about.' })
  working: WorkingView;
}

@ApiSchema({ name: 'LaborAmount', description: 'An amount with its working.' })
export class LaborAmountView {
  @ApiProperty({ type: () => MoneyBody, description: 'The amount.' })
  amount: MoneyBody;

  @ApiProperty({ type: () => WorkingView, description: 'How it came about.' })
  working: WorkingView;
}

@ApiSchema({ name: 'BurdenAmount', description: 'What is paid on top of wages by one rate.' })
export class BurdenAmountView extends LaborAmountView {
  @ApiProperty({ type: 'string', nullable: true, description: 'The code of the burden rate; null for people\'s own percentages, which apply where the company has no rates.' })
  code: string | null;
}

@ApiSchema({ name: 'LaborShare', description: 'The part of a week\'s total that some of its hours carry.' })
export class LaborShareView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job.' })
  jobId: string;

  @ApiProperty({ type: 'string', description: 'The cost code.' })
  costCode: string;

  @ApiProperty({ type: 'string', description: 'Hours as a decimal string, to four decimals.', example: '8.25' })
  hours: string;

  @ApiProperty({ type: () => MoneyBody, description: 'Wages, overtime and burden. All shares of a week add up to its total.' })
  cost: MoneyBody;
}

@ApiSchema({ name: 'EntryShare', description: 'The part of a week\'s total that a time entry carries; an entry across two weeks has one in each.' })
export class EntryShareView extends LaborShareView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The time entry.' })
  entryId: string;
}

@ApiSchema({ name: 'WorkWeek', description: 'What a person\'s hours of a workweek come to. It supports payroll and replaces no advice: state law, contracts and special kinds of pay are not in it. Hours that run, are held or void do not count.' })
export class WorkWeekView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'Who worked.' })
  personId: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'The day that the week begins on.' })
  firstDay: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'The last day that begins within it; its burden rates and its calendar year are the week\'s.' })
  lastDay: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the week begins.' })
  startsAt: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the next one begins; 167 or 169 hours later when the clocks change.' })
  endsAt: string;

  @ApiProperty({ type: () => WorkedHoursView, description: 'Hours worked: rests and travel between sites count, meals and other unpaid breaks do not.' })
  worked: WorkedHoursView;

  @ApiProperty({ type: () => WorkedHoursView, description: 'Hours of overtime.' })
  overtime: WorkedHoursView;

  @ApiProperty({ type: () => LaborAmountView, description: 'Wages of all hours.' })
  straightPay: LaborAmountView;

  @ApiProperty({ type: 'string', nullable: true, description: 'Straight pay for an hour, the average over all wages of the week, to six decimals; null without a worked minute.', example: '26.11413' })
  regularRate: string | null;

  @ApiProperty({ type: () => LaborAmountView, description: 'What overtime adds.' })
  premium: LaborAmountView;

  @ApiProperty({ type: () => [BurdenAmountView], description: 'What is paid on top of wages.' })
  burden: BurdenAmountView[];

  @ApiProperty({ type: () => MoneyBody, description: 'Straight pay, premium and burden.' })
  total: MoneyBody;

  @ApiProperty({ type: () => [LaborShareView], description: 'The total by job and cost code.' })
  byCostCode: LaborShareView[];

  @ApiProperty({ type: () => [EntryShareView], description: 'The total by time entry.' })
  byEntry: EntryShareView[];

  @ApiProperty({ type: [String], description: 'What is not in these figures as yet: hours of the week that are held, or run still.' })
  warnings: string[];
}
