import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { Field } from '../../../platform/http/fields/index.js';
import { ROLES, type Role } from '../../../platform/auth/actor.js';
import { BlockerView } from '../blockers/blockers.dto.js';
import { DaysOffView } from '../days-off/days-off.dto.js';
import { VisitView } from '../visits/visits.view.js';
import { parseWeek } from './iso-week.js';

const says = 'must be a week of ISO 8601 written as YYYY-Www, such as 2027-W19';

export class BoardQuery {
  @Field({ description: 'The week of ISO 8601, from Monday to Sunday; the present one in the company\'s time zone unless told.', optional: true, example: '2027-W19' }, { type: 'string', pattern: '^\\d{4}-W\\d{2}$' }, (value) =>
    typeof value === 'string' && parseWeek(value) !== null ? null : says,
  )
  week?: string;
}

@ApiSchema({ name: 'BoardPerson', description: 'Somebody who can be sent.' })
export class BoardPersonView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The person.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'The name.' })
  name: string;

  @ApiProperty({ type: 'string', enum: ROLES, description: 'What the person does here.' })
  role: Role;
}

@ApiSchema({ name: 'BoardJob', description: 'A job that is visited in the week.' })
export class BoardJobView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'The number that people say.', example: 'J-1001' })
  number: string;

  @ApiProperty({ type: 'string', description: 'What is to be done.' })
  title: string;

  @ApiProperty({ type: 'string', description: 'How far it is.' })
  state: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'Where it is, one line below the other; null for a job without a site.' })
  address: string | null;
}

@ApiSchema({ name: 'Board', description: 'A week: who goes where, who is off, and what must come first.' })
export class BoardView {
  @ApiProperty({ type: 'string', description: 'The week of ISO 8601.', example: '2027-W19' })
  week: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'Its Monday.' })
  firstDay: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'Its Sunday.' })
  lastDay: string;

  @ApiProperty({ type: () => [BoardPersonView], description: 'The active people, by name.' })
  people: BoardPersonView[];

  @ApiProperty({ type: () => [BoardJobView], description: 'The jobs that are visited, by number.' })
  jobs: BoardJobView[];

  @ApiProperty({ type: () => [VisitView], description: 'The visits that start in the week, each by its own site\'s days; by their start, cancelled ones too.' })
  visits: VisitView[];

  @ApiProperty({ type: () => [DaysOffView], description: 'The days off that touch the week; for crew their own.' })
  daysOff: DaysOffView[];

  @ApiProperty({ type: () => [BlockerView], description: 'What must come before the work on these jobs, cleared or not.' })
  blockers: BlockerView[];

  @ApiProperty({ type: 'boolean', description: 'Whether there is more than a board shows; then list the visits by day, and the rest by job and person.' })
  cut: boolean;
}
