import { ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../../domain/quantity/index.js';
import { FITTING_KINDS, type FittingKind } from '../../../domain/trade/hydraulics/index.js';
import { SPECIES, type Species } from '../../../domain/trade/life/index.js';
import { MAX_DEPTH_M } from '../../../domain/trade/index.js';
import { ChoiceField, QuantityField } from '../../../platform/http/fields/index.js';
import { FlowLimits, Kind, optionalLength } from './attribute-fields.js';

/** Where a pipe begins and ends costs head too, but nobody sells it. */
const NOT_SOLD: readonly FittingKind[] = ['entrance-projecting', 'entrance-flush', 'exit'];
const SOLD_FITTINGS = FITTING_KINDS.filter((kind) => !NOT_SOLD.includes(kind));

@ApiSchema({ name: 'FittingAttributes' })
export class FittingAttributes {
  @Kind('fitting')
  kind: 'fitting';

  @ChoiceField({ description: 'Which fitting it is.', of: SOLD_FITTINGS, optional: true, example: 'elbow-90' })
  fittingKind?: FittingKind | null;

  @QuantityField({ description: 'The opening inside of the pipe that it fits, not the nominal size.', ...optionalLength(0.003, 2) })
  innerDiameter?: Quantity | null;
}

@ApiSchema({ name: 'SpillwayAttributes' })
export class SpillwayAttributes extends FlowLimits {
  @Kind('spillway')
  kind: 'spillway';

  @QuantityField({ description: 'The width of the lip that the water falls from.', ...optionalLength(0.02, 50) })
  lipWidth?: Quantity | null;
}

@ApiSchema({ name: 'DoserAttributes' })
export class DoserAttributes {
  @Kind('doser')
  kind: 'doser';

  @QuantityField({ description: 'How much the reservoir holds.', kind: 'volume', minSi: 1e-5, maxSi: 10, optional: true })
  reservoirVolume?: Quantity | null;

  @QuantityField({ description: 'The dose rate: how much it gives in a day, for the water of doseFor where that is stated.', kind: 'volume', minSi: 1e-8, maxSi: 1, optional: true })
  dosePerDay?: Quantity | null;

  @QuantityField({ description: 'The volume of water that dosePerDay is for; set to another volume, the dose goes with it.', kind: 'volume', minSi: 0.001, maxSi: 1e5, optional: true })
  doseFor?: Quantity | null;

  @QuantityField({ description: 'The step in which the volume of water is set on it; missing when it takes any volume.', kind: 'volume', minSi: 0.001, maxSi: 1e5, optional: true })
  settingStep?: Quantity | null;
}

@ApiSchema({ name: 'PlantAttributes' })
export class PlantAttributes {
  @Kind('plant')
  kind: 'plant';

  @QuantityField({ description: 'The water surface that one covers when it is grown.', kind: 'area', minSi: 0.001, maxSi: 100, optional: true })
  coverArea?: Quantity | null;

  @QuantityField({ description: 'The least depth of water above its roots; 0 for a plant of the margin.', ...optionalLength(0, MAX_DEPTH_M) })
  depthMinimum?: Quantity | null;

  @QuantityField({ description: 'The greatest depth of water above its roots; not less than the least.', ...optionalLength(0, MAX_DEPTH_M) })
  depthMaximum?: Quantity | null;
}

@ApiSchema({ name: 'FishAttributes' })
export class FishAttributes {
  @Kind('fish')
  kind: 'fish';

  @ChoiceField({ description: 'The species, where it is one whose temperatures are known here.', of: SPECIES, optional: true, example: 'goldfish' })
  species?: Species | null;

  @QuantityField({ description: 'The mass of one when it is grown, which the water must carry.', kind: 'mass', minSi: 0.0001, maxSi: 100, optional: true })
  grownMass?: Quantity | null;
}
