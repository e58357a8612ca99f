import { ApiSchema } from '@nestjs/swagger';
import { TextField } from '../../platform/http/fields/index.js';

/** Why something was cancelled or voided: without it, nobody could tell a correction from a loss afterwards. */
@ApiSchema({ name: 'Reason' })
export class ReasonBody {
  @TextField({ description: 'Why, in words that somebody else understands later.', max: 500, example: 'Entered for the wrong day' })
  reason: string;
}
