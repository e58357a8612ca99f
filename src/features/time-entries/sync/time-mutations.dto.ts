import { ApiSchema, PartialType } from '@nestjs/swagger';
import { IdField, TextField } from '../../../platform/http/fields/index.js';
import { StopTimeBody, TimeEntryCorrectionBody } from '../time-entries.dto.js';

const ENTRY = { description: 'The entry.' };

@ApiSchema({ name: 'TimeEntryStopMutation', description: 'Without an end the hours end when this was recorded.' })
export class StopTimeMutation extends StopTimeBody {
  @IdField(ENTRY)
  id: string;
}

@ApiSchema({ name: 'TimeEntryCorrectionMutation', description: 'The fields to change; null takes an optional one away.' })
export class CorrectTimeMutation extends PartialType(TimeEntryCorrectionBody) {
  @IdField(ENTRY)
  id: string;
}

@ApiSchema({ name: 'TimeEntryVoidMutation' })
export class VoidTimeMutation {
  @IdField(ENTRY)
  id: string;

  @TextField({ description: 'Why, in words that somebody else understands later.', max: 500, example: 'Entered for the wrong day' })
  reason: string;
}
