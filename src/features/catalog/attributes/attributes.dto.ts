import { ApiSchema } from '@nestjs/swagger';
import { Exclude, Expose } from 'class-transformer';
import type { Quantity } from '../../../domain/quantity/index.js';
import { ChoiceField, ListField, NumberField, QuantityField } from '../../../platform/http/fields/index.js';
import { FlowVessel, Kind, optionalLength } from './attribute-fields.js';
import { PART_KINDS, type PartKind } from './part-kinds.js';

export const MOST_CURVE_POINTS = 50;

@ApiSchema({ name: 'PumpCurvePoint' })
export class PumpCurvePointBody {
  @QuantityField({ description: 'What the pump delivers.', kind: 'flow', minSi: 0, maxSi: 10 })
  flow: Quantity;

  @QuantityField({ description: 'The head that it lifts to at this flow.', kind: 'length', minSi: 0, maxSi: 500 })
  head: Quantity;
}

@ApiSchema({ name: 'PumpAttributes' })
export class PumpAttributes {
  @Kind('pump')
  kind: 'pump';

  @ListField(() => PumpCurvePointBody, { description: 'Points of the pump curve in the order of rising flow. The head must not rise from one to the next.', fewest: 2, most: MOST_CURVE_POINTS, optional: true })
  curve?: PumpCurvePointBody[] | null;

  @NumberField({ description: 'Electrical power that the pump draws, in watts.', min: 1, max: 100_000, optional: true, example: 320 })
  powerWatts?: number | null;
}

@ApiSchema({ name: 'PipeAttributes' })
export class PipeAttributes {
  @Kind('pipe')
  kind: 'pipe';

  @QuantityField({ description: 'The diameter of the opening inside, not the nominal size.', ...optionalLength(0.003, 2) })
  innerDiameter?: Quantity | null;

  @QuantityField({ description: 'The length of one piece, for pipe that is sold by the piece.', ...optionalLength(0.01, 1000) })
  pieceLength?: Quantity | null;
}

class RollAttributes {
  @QuantityField({ description: 'The width of the roll: the widest sheet without a seam.', ...optionalLength(0.1, 100) })
  rollWidth?: Quantity | null;

  @QuantityField({ description: 'The length on the roll.', ...optionalLength(0.1, 2000) })
  rollLength?: Quantity | null;
}

@ApiSchema({ name: 'LinerAttributes' })
export class LinerAttributes extends RollAttributes {
  @Kind('liner')
  kind: 'liner';
}

@ApiSchema({ name: 'UnderlaymentAttributes' })
export class UnderlaymentAttributes extends RollAttributes {
  @Kind('underlayment')
  kind: 'underlayment';
}

@ApiSchema({ name: 'SkimmerAttributes' })
export class SkimmerAttributes extends FlowVessel {
  @Kind('skimmer')
  kind: 'skimmer';
}

@ApiSchema({ name: 'FilterAttributes' })
export class FilterAttributes extends FlowVessel {
  @Kind('filter')
  kind: 'filter';

  @QuantityField({ description: 'The surface of the medium that organisms grow on.', kind: 'area', minSi: 0.001, maxSi: 1e6, optional: true })
  surfaceArea?: Quantity | null;
}

@ApiSchema({ name: 'StoneAttributes' })
export class StoneAttributes {
  @Kind('stone')
  kind: 'stone';

  @NumberField({ description: 'Density of the rock itself, in kg/m3.', min: 1000, max: 4000, optional: true, example: 2643 })
  densityKgPerM3?: number | null;
}

@ApiSchema({ name: 'GravelAttributes' })
export class GravelAttributes {
  @Kind('gravel')
  kind: 'gravel';

  @NumberField({ description: 'Density of the heap with the voids in it, in kg/m3.', min: 500, max: 3000, optional: true, example: 1500 })
  bulkDensityKgPerM3?: number | null;

  @NumberField({ description: 'The part of the heap that is void, as a factor in the heap\'s volume.', min: 0, max: 0.9, optional: true, example: 0.4 })
  voidFraction?: number | null;
}

@ApiSchema({ name: 'OtherAttributes' })
export class OtherAttributes {
  @Kind('other')
  kind: 'other';
}

/** What attributes of no known kind are read as: the answer is about the kind, not about each field beside it. */
@Exclude()
export class UnknownAttributes {
  @Expose()
  @ChoiceField({ description: 'The kind.', of: PART_KINDS })
  kind: PartKind;
}
