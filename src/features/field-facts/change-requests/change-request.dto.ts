import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ChoiceField, Field, IdField, InstantField, isUuid, OwnIdField, TextField } from '../../../platform/http/fields/index.js';
import { CreatedAt, FeatureField, IdShown, JobField, NoteField, PhotosMissing, RecordedBy, VoidedAt, VoidReason } from '../fact/fact.dto.js';
import { type Decision, DECISIONS } from './change-request.entity.js';

const MOST_PHOTOS = 20;

@ApiSchema({ name: 'ChangeRequestInput' })
export class ChangeRequestBody {
  @OwnIdField()
  id?: string | null;

  @JobField()
  jobId: string;

  @FeatureField()
  featureId?: string | null;

  @InstantField({ description: 'When it was found.' })
  foundAt: string;

  @TextField({ description: 'What was found, and what it seems to need. No price: the office makes that.', max: 4000, multiline: true, example: 'Liner torn behind the waterfall for 6 ft; soil washed out below.' })
  description: string;

  @Field({ description: `The photos: ids of attachments, at most ${MOST_PHOTOS}. They may arrive later than the words.`, optional: true }, { type: 'array', items: { type: 'string', format: 'uuid' }, maxItems: MOST_PHOTOS }, (value) => {
    if (!Array.isArray(value) || value.length > MOST_PHOTOS) return `must be a list of at most ${MOST_PHOTOS} ids`;
    const bad = value.findIndex((item) => !isUuid(item));
    return bad < 0 ? null : `/${bad}: must be the id of an attachment: a UUID`;
  })
  attachmentIds?: string[] | null;

  @NoteField()
  note?: string | null;
}

@ApiSchema({ name: 'ChangeRequestAnswer' })
export class ChangeRequestAnswerBody {
  @ChoiceField({ description: 'What becomes of it: taken up into a change to be priced and offered, or declined.', of: DECISIONS })
  decision: Decision;

  @TextField({ description: 'What the crew should know.', max: 1000, multiline: true, optional: true, example: 'Customer agrees; go on at the edge until the liner is here.' })
  answer?: string | null;
}

@ApiSchema({ name: 'PushedChangeRequestAnswer', description: 'What the office\'s phone pushes to answer a request.' })
export class PushedAnswer extends ChangeRequestAnswerBody {
  @IdField({ description: 'The request.' })
  id: string;
}

@ApiSchema({ name: 'ChangeRequest', description: 'What the crew found that the contract does not cover, and what the office says to it.' })
export class ChangeRequestView extends ChangeRequestBody {
  @IdShown('The request.')
  declare id: string;

  declare featureId: string | null;
  declare note: string | null;

  declare attachmentIds: string[];

  @PhotosMissing()
  photosMissing: string[];

  @ApiProperty({ type: 'string', enum: DECISIONS, nullable: true, description: 'What becomes of it; null until the office has answered.' })
  decision: Decision | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'What the office says to it.' })
  answer: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When the office answered.' })
  answeredAt: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'Who answered.' })
  answeredBy: string | null;

  @RecordedBy()
  recordedBy: string | null;

  @VoidedAt()
  voidedAt: string | null;

  @VoidReason()
  voidReason: string | null;

  @CreatedAt()
  createdAt: string;
}
