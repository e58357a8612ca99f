import { ApiExtraModels, ApiProperty, ApiPropertyOptional, ApiSchema, getSchemaPath } from '@nestjs/swagger';
import { Field, IdField, InstantField, IntegerField, isUuid, TextField } from '../../../platform/http/fields/index.js';
import { ProblemView } from '../../../platform/http/problem.view.js';
import { PUSHED_KINDS } from './pushed-kinds.js';

export const MOST_MUTATIONS = 500;
const MOST_DEPENDENCIES = 20;
const LARGEST_COUNTER = 2_147_483_647;

@ApiSchema({ name: 'Mutation', description: 'One thing that the phone\'s person did, sent until its outcome is known.' })
export class MutationBody {
  @IdField({ description: 'The mutation, chosen by the phone once and kept however often it is sent.' })
  id: string;

  @IntegerField({ description: 'The number of the mutation on this phone: each is larger than the one before. Mutations of one push are applied in this order.', min: 0, max: LARGEST_COUNTER, example: 17 })
  counter: number;

  @TextField({ description: `What it is: ${Object.keys(PUSHED_KINDS).join(', ')}.`, max: 60, example: 'time-entry.log' })
  kind: string;

  @InstantField({ description: 'When it was taken down, by the phone\'s clock.' })
  recordedAt: string;

  @Field({ description: 'What the route that does the same takes; `POST /v1/sync/push` names it for each kind. What makes something chooses its `id`, so that later mutations can name it; a change names its row in `id` beside what that route takes, and in a correction only the fields to change.' }, { type: 'object', additionalProperties: true }, (value) =>
    typeof value === 'object' && value !== null && !Array.isArray(value) ? null : 'must be an object',
  )
  body: object;

  @IntegerField({ description: 'The revision that the phone changed; needed where a record is changed, or a field fact voided or answered; left out for what is new.', min: 1, max: LARGEST_COUNTER, optional: true })
  baseRevision?: number | null;

  @Field({ description: 'Mutations without which this one makes no sense: it is applied only after they were.', optional: true }, { type: 'array', items: { type: 'string', format: 'uuid' }, maxItems: MOST_DEPENDENCIES }, (value) =>
    Array.isArray(value) && value.length <= MOST_DEPENDENCIES && value.every(isUuid) ? null : `must be a list of at most ${MOST_DEPENDENCIES} ids of mutations`,
  )
  dependsOn?: string[] | null;
}

@ApiSchema({ name: 'Push' })
@ApiExtraModels(MutationBody)
export class PushBody {
  @IdField({ description: 'The installation of the client, chosen by it once.' })
  clientId: string;

  @InstantField({ description: 'The phone\'s clock when it sent this: tells how far that clock is off.', optional: true })
  sentAt?: string | null;

  /** Each mutation is checked on its own, so that a bad one does not block the rest; only its id must be there to answer by. */
  @Field({ description: `1 to ${MOST_MUTATIONS} mutations. One that is not as it must be is rejected by itself, as long as it has an id.` }, { type: 'array', items: { $ref: getSchemaPath(MutationBody) }, minItems: 1, maxItems: MOST_MUTATIONS }, checkMutations)
  mutations: { readonly id: string }[];
}

function checkMutations(value: unknown): string | null {
  if (!Array.isArray(value) || value.length === 0) return 'must be a list of at least one mutation';
  if (value.length > MOST_MUTATIONS) return `must have at most ${MOST_MUTATIONS} mutations; send the rest in the next push`;
  const bad = value.findIndex((item) => !isUuid((item as { id?: unknown } | null)?.id));
  return bad < 0 ? null : `/${bad}/id: must be an id: a UUID such as 0199c3a2-5b1e-7c44-9d0a-3f6b1c2d4e5f`;
}

export const OUTCOMES = ['applied', 'duplicate', 'conflict', 'rejected'] as const;
export type Outcome = (typeof OUTCOMES)[number];

@ApiSchema({ name: 'MutationOutcome', description: 'What became of one mutation.' })
export class OutcomeView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The mutation.' })
  id: string;

  @ApiProperty({ type: 'string', enum: OUTCOMES, description: '`applied`: done now. `duplicate`: pushed before; `first` says what became of it then. `conflict`: somebody else changed the record; `current` is how it stands. `rejected`: `problem` says why, and nothing was done.' })
  outcome: Outcome;

  @ApiProperty({ type: 'string', enum: ['applied', 'conflict', 'rejected'], required: false, description: 'The outcome of the first time, of a duplicate.' })
  first?: string;

  @ApiProperty({ type: 'string', required: false, description: 'The kind of the row that it made or changed, as the pull calls it.', example: 'time-entry' })
  entity?: string;

  @ApiProperty({ type: 'string', format: 'uuid', required: false, description: 'That row.' })
  entityId?: string;

  @ApiProperty({ type: 'integer', required: false, description: 'The revision of the row: what it became when the mutation was applied, or the present one in a conflict.' })
  revision?: number;

  @ApiPropertyOptional({ type: 'object', additionalProperties: true, description: 'In a conflict, the row as it stands, as the pull gives it; missing when this person does not keep it.' })
  current?: object;

  @ApiProperty({ type: () => ProblemView, required: false, description: 'Why not. Places in it are those of the mutation: `/body/startedAt`.' })
  problem?: ProblemView;

  @ApiProperty({ type: 'boolean', description: 'Whether the outcome is final. One that is not (what it depends on is missing, the kind is not known yet, a failure on our side) may be sent again as it is. After a final one nothing comes of sending it again; what was mended goes into a new mutation with a new id.' })
  final: boolean;
}

@ApiSchema({ name: 'Pushed' })
export class PushView {
  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the service got the push.' })
  receivedAt: string;

  @ApiProperty({ type: 'integer', nullable: true, description: 'The phone\'s clock less the service\'s, in seconds; null without `sentAt`.' })
  clockSkewSeconds: number | null;

  @ApiProperty({ type: 'string', isArray: true, description: 'What the person should know.' })
  warnings: string[];

  @ApiProperty({ type: () => [OutcomeView], description: 'One outcome for each mutation, in the order of the push.' })
  items: OutcomeView[];
}
