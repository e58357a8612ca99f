import { ApiProperty, ApiPropertyOptional, ApiSchema } from '@nestjs/swagger';
import { Field, IntegerField, QueryInteger } from '../../../platform/http/fields/index.js';
import { PULLED_KINDS } from './pulled-kinds.js';

export const MOST_PULLED = 500;
const USUALLY_PULLED = 200;

export class PullQuery {
  @IntegerField({ description: 'The most items to return.', min: 1, max: MOST_PULLED, optional: true, default: USUALLY_PULLED, example: 200 })
  @QueryInteger()
  limit: number = USUALLY_PULLED;

  @Field({ description: 'The `cursor` of the answer before, as it is; leave it out to start, and after a 410 or a 400 for it.', optional: true }, { type: 'string', minLength: 1, maxLength: 2000 }, (value) => (typeof value === 'string' && value !== '' ? null : 'must be the cursor of an earlier answer'))
  cursor?: string;
}

@ApiSchema({ name: 'PulledItem', description: 'A row that the phone keeps from now on, or no longer.' })
export class PulledItemView {
  @ApiProperty({ type: 'string', description: `What it is: ${Object.keys(PULLED_KINDS).join(', ')}. A later release may give more; keep them, or leave them out.`, example: 'time-entry' })
  kind: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The row.' })
  id: string;

  @ApiProperty({ type: 'string', enum: ['upsert', 'removal'], description: '`upsert`: keep this in place of what there is. `removal`: forget it; it is not there any more, or not for this person. A row that the phone does not have is none to forget.' })
  change: 'upsert' | 'removal';

  @ApiProperty({ type: 'integer', required: false, description: 'The revision of the row, for `baseRevision`; of two answers that crossed, the larger revision is the newer.' })
  revision?: number;

  @ApiPropertyOptional({ type: 'object', additionalProperties: true, description: 'The row as it stands, with an upsert: as its own route answers the crew, without prices, costs and wages, whoever asks. `GET /v1/sync/pull` names the route for each kind.' })
  value?: object;
}

@ApiSchema({ name: 'Pulled' })
export class PullView {
  @ApiProperty({ type: () => [PulledItemView], description: 'What changed. Keep all of it before the cursor.' })
  items: PulledItemView[];

  @ApiProperty({ type: 'string', description: 'How far this answer comes: send it in the next pull.' })
  cursor: string;

  @ApiProperty({ type: 'boolean', description: 'Whether there is more to be had at once.' })
  more: boolean;
}
