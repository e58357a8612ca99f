import { ApiSchema } from '@nestjs/swagger';
import { IdField, IdListField, IntegerField, LocalDateField, OwnIdField, TextField, TextListField } from '../../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../../platform/http/lists.js';

const CLOCK_TIME = /^([01][0-9]|2[0-3]):[0-5][0-9]$/;
const MOST_PEOPLE = 50;

@ApiSchema({ name: 'VisitInput' })
export class VisitBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'The job.' })
  jobId: string;

  @LocalDateField({ description: 'The day, in the site\'s time zone.' })
  day: string;

  @TextField({ description: 'When it starts, HH:MM by the site\'s clocks. Of a time that comes twice, when the clocks are set back, it is the first.', max: 5, pattern: { test: CLOCK_TIME, says: 'must be a time of day written as HH:MM, from 00:00 to 23:59' }, example: '07:30' })
  startTime: string;

  @IntegerField({ description: 'How many minutes it takes, 1 to 1440.', min: 1, max: 1440, example: 480 })
  lengthMinutes: number;

  @IdListField({ description: 'Who comes; none so far unless told. They join the crew of the job.', most: MOST_PEOPLE, optional: true })
  personIds?: string[] | null;

  @TextListField({ description: 'What to bring.', most: 50, maxLength: 200, optional: true, example: ['Mud pump', 'Fish tank and aerator'] })
  bring?: string[] | null;

  @TextField({ description: 'What is to be done, or worth knowing.', max: 2000, multiline: true, optional: true, example: 'Drain first; frogs in the margin.' })
  note?: string | null;
}

export class VisitsQuery extends ListQuery {
  @IdFilter('Only visits to this job.')
  jobId?: string;

  @IdFilter('Only visits that this person comes to.')
  personId?: string;

  @LocalDateField({ description: 'Only visits that start on this day, each by its own site\'s days.', optional: true })
  day?: string;

  @LocalDateField({ description: 'Only visits that start on this day or later.', optional: true, example: '2027-04-12' })
  firstDay?: string;

  @LocalDateField({ description: 'Only visits that start on this day or earlier.', optional: true, example: '2027-04-18' })
  lastDay?: string;
}
