import { ApiExtraModels, ApiProperty, ApiSchema, getSchemaPath } from '@nestjs/swagger';
import { Field, InstantField } from '../../../platform/http/fields/index.js';
import { ProblemView } from '../../../platform/http/problem.view.js';
import { TimeEntryBody, TimeEntryView } from '../time-entries.dto.js';

export const MOST_IN_A_BATCH = 500;

function checkItems(value: unknown): string | null {
  const count = Array.isArray(value) ? value.length : 0;
  return count >= 1 && count <= MOST_IN_A_BATCH ? null : `must be a list of 1 to ${MOST_IN_A_BATCH} time entries`;
}

@ApiExtraModels(TimeEntryBody)
@ApiSchema({ name: 'TimeEntryBatch' })
export class TimeEntryBatchBody {
  // Checked one by one: a list whose check failed as a whole would take the good hours with the bad one.
  @Field({ description: 'The hours, of one person or of many. Each has an outcome of its own.' }, { type: 'array', items: { $ref: getSchemaPath(TimeEntryBody) }, minItems: 1, maxItems: MOST_IN_A_BATCH }, checkItems)
  items: unknown[];

  @InstantField({ description: 'The time of the device when it sends this, for items that do not tell it themselves.', optional: true })
  sentAt?: string | null;
}

@ApiSchema({ name: 'TimeEntryOutcome', description: 'What became of one item of a batch.' })
export class TimeEntryOutcomeView {
  @ApiProperty({ type: 'string', enum: ['made', 'repeated', 'refused'], description: 'Made now; made by an earlier request with the same id and body; or refused.' })
  outcome: 'made' | 'repeated' | 'refused';

  @ApiProperty({ type: () => TimeEntryView, required: false, description: 'The entry, unless it was refused.' })
  entry?: TimeEntryView;

  @ApiProperty({ type: () => ProblemView, required: false, description: 'Why it was refused, with places in the item.' })
  problem?: ProblemView;
}

@ApiSchema({ name: 'TimeEntryOutcomes' })
export class TimeEntryOutcomesView {
  @ApiProperty({ type: [TimeEntryOutcomeView], description: 'One outcome for each item, in their order.' })
  items: TimeEntryOutcomeView[];
}
