import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { IdListField } from '../../../platform/http/fields/index.js';

const MOST_PEOPLE = 200;

@ApiSchema({ name: 'CrewInput' })
export class CrewBody {
  @IdListField({ description: 'Everybody who is to be on the crew of the job; whoever is not named leaves it.', most: MOST_PEOPLE })
  personIds: string[];
}

@ApiSchema({ name: 'Crew', description: 'Who is on the crew of a job. Their phones keep what the job needs.' })
export class CrewView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job.' })
  jobId: string;

  @ApiProperty({ type: 'array', items: { type: 'string', format: 'uuid' }, description: 'Who is on it, in the order of joining.' })
  personIds: string[];
}
