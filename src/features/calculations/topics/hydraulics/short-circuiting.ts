import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { within } from '../../../../domain/errors.js';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { parseOutline } from '../../../../domain/trade/index.js';
import { shortCircuit } from '../../../../domain/trade/hydraulics/index.js';
import { Field, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';
import { inUnit } from './in-us-units.js';

const OUTLINE = 'The outline, as in a survey: a rectangle or ellipse by length and width, a polygon by its points, or two-stake ranges. Area and perimeter alone do not tell how long the pond is.';

@ApiSchema({ name: 'ShortCircuitingInput' })
export class ShortCircuitingBody {
  // The domain reads the shapes; a class for each would repeat it.
  @Field({ description: OUTLINE, example: { shape: 'ellipse', length: { value: 24, unit: 'ft' }, width: { value: 16, unit: 'ft' } } }, { type: 'object', additionalProperties: true }, () => null)
  outline: unknown;

  @QuantityField({ description: 'The straight line from where the pump draws to where the water comes back.', kind: 'length', minSi: 0, maxSi: 10_000 })
  distance: Quantity;
}

@ApiSchema({ name: 'ShortCircuiting' })
export class ShortCircuitingView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'The longest straight line between two points of the outline, in ft.' })
  longestChord: Quantity;

  @ApiProperty({ type: 'number', description: 'The distance in percent of the longest chord.' })
  sharePercent: number;

  @ApiProperty({ type: 'boolean', description: 'Whether it is under half.' })
  tooClose: boolean;
}

export const SHORT_CIRCUITING = calculation({
  name: 'short-circuiting',
  title: 'Whether suction and discharge stand too close together',
  description: 'Water that comes back near the pump\'s suction goes round in a small circle and leaves the rest of the pond still. Warns when the straight line between them is under half the longest chord of the outline (common practice).',
  input: ShortCircuitingBody,
  output: ShortCircuitingView,
  run: ({ outline, distance }: ShortCircuitingBody): ShortCircuitingView => {
    const { longestChordM, share, tooClose, working } = shortCircuit(within('/outline', () => parseOutline(outline)), toSi(distance));
    return {
      longestChord: inUnit(longestChordM, 'ft'),
      sharePercent: share * 100,
      tooClose,
      working,
      warnings: tooClose ? ['Short-circuiting: suction and discharge stand less than half the longest chord of the pond apart; move one to the opposite end, or lead the return there by pipe.'] : [],
    };
  },
});
