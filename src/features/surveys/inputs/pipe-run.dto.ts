import { ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../../domain/quantity/index.js';
import { MAX_LENGTH_M } from '../../../domain/trade/index.js';
import { FITTING_KINDS, type FittingKind } from '../../../domain/trade/hydraulics/index.js';
import { ChoiceField, Field, IntegerField, ListField, QuantityField } from '../../../platform/http/fields/index.js';

const SIDES = ['suction', 'discharge'] as const;

@ApiSchema({ name: 'SurveyedFittings' })
export class SurveyedFittingsBody {
  @ChoiceField({ description: 'The kind of fitting.', of: FITTING_KINDS, example: 'elbow-90' })
  kind: FittingKind;

  @IntegerField({ description: 'How many of them, as a count.', min: 1, max: 500, example: 4 })
  count: number;
}

@ApiSchema({ name: 'SurveyedPipe' })
export class SurveyedPipeBody {
  @ChoiceField({ description: 'On which side of the pump it lies.', of: SIDES })
  side: (typeof SIDES)[number];

  @QuantityField({ description: 'The length of the pipe, bends and all.', kind: 'length', minSi: 0, maxSi: 5000 })
  length: Quantity;

  @QuantityField({ description: 'The diameter of the opening inside, not the nominal size.', kind: 'length', minSi: 0.003, maxSi: 2 })
  innerDiameter: Quantity;

  @ListField(() => SurveyedFittingsBody, { description: 'The fittings in it.', most: 30, optional: true })
  fittings?: SurveyedFittingsBody[] | null;
}

/** The smallest unit of an outline is mm: the bound of a reading's place holds here too. */
const FARTHEST = MAX_LENGTH_M * 1000;

/** A place as readings have it. */
function PlaceField(what: string): PropertyDecorator {
  const description = `${what}, as [x, y] in the unit and axes of the outline; a rectangle or an ellipse has x along its length and y along its width, from any corner, in the unit of its length. Both places or none.`;
  return Field({ description, optional: true, example: [2, 8] }, { type: 'array', minItems: 2, maxItems: 2, items: { type: 'number', minimum: -FARTHEST, maximum: FARTHEST } }, (value) => {
    if (!Array.isArray(value) || value.length !== 2) return 'must be a pair of numbers [x, y]';
    const bad = value.findIndex((coordinate) => typeof coordinate !== 'number' || !(Math.abs(coordinate) <= FARTHEST));
    return bad < 0 ? null : `/${bad}: must be a number from -${FARTHEST} to ${FARTHEST}`;
  });
}

@ApiSchema({ name: 'SurveyedPipeRun' })
export class PipeRunBody {
  @ListField(() => SurveyedPipeBody, { description: 'The pipes, one item for each stretch of one size.', fewest: 1, most: 20 })
  pipes: SurveyedPipeBody[];

  @QuantityField({ description: 'The lift: how high the water comes out above the water that it is taken from.', kind: 'length', minSi: 0, maxSi: 200 })
  staticLift: Quantity;

  @PlaceField('Where the pump draws its water')
  suctionAt?: [number, number] | null;

  @PlaceField('Where the water comes back into the pond')
  dischargeAt?: [number, number] | null;
}
