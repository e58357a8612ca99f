import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ChoiceField, IdField, OwnIdField, TextField } from '../../../platform/http/fields/index.js';
import { CreatedAt, FactsQuery, FeatureField, IdShown, JobField, RecordedBy } from '../fact/fact.dto.js';
import { PUNCH_STATES, type PunchState } from './punch-item.entity.js';

export class PunchItemsQuery extends FactsQuery {
  @ChoiceField({ description: 'Only those in this state.', of: PUNCH_STATES, optional: true })
  state?: PunchState;
}

@ApiSchema({ name: 'PunchItemInput' })
export class PunchItemBody {
  @OwnIdField()
  id?: string | null;

  @JobField()
  jobId: string;

  @FeatureField()
  featureId?: string | null;

  @TextField({ description: 'What is left to do.', max: 1000, multiline: true, example: 'Reset two stones at the skimmer' })
  description: string;

  @TextField({ description: 'Where, in words.', max: 200, optional: true, example: 'South bank' })
  place?: string | null;

  @ChoiceField({ description: 'Whether it is done; `open` unless told.', of: PUNCH_STATES, optional: true, default: 'open' })
  state?: PunchState | null;
}

/** What a phone pushes: the fields that it changed, and no others. */
@ApiSchema({ name: 'PunchItemChange' })
export class PunchItemChange {
  @IdField({ description: 'The item.' })
  id: string;

  @FeatureField()
  featureId?: string | null;

  @TextField({ description: 'What is left to do.', max: 1000, multiline: true, optional: true })
  description?: string | null;

  @TextField({ description: 'Where, in words; null takes it away.', max: 200, optional: true })
  place?: string | null;

  @ChoiceField({ description: 'Whether it is done.', of: PUNCH_STATES, optional: true })
  state?: PunchState | null;
}

@ApiSchema({ name: 'PunchItem', description: 'Something left to do before the customer can be asked to sign.' })
export class PunchItemView extends PunchItemBody {
  @IdShown('The item.')
  declare id: string;

  declare featureId: string | null;
  declare place: string | null;
  declare state: PunchState;

  @RecordedBy()
  recordedBy: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was marked as done.' })
  doneAt: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'Who marked it as done.' })
  doneBy: string | null;

  @CreatedAt()
  createdAt: string;
}
