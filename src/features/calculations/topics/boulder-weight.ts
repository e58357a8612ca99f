import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { convert, toSi, type Quantity } from '../../../domain/quantity/index.js';
import { boulderWeight, STONE_FORMS, type StoneForm } from '../../../domain/trade/stone/index.js';
import { ChoiceField, NumberField, QuantityBody, QuantityField } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { ComputedView } from '../computed.view.js';

const FORMS = Object.keys(STONE_FORMS) as StoneForm[];

@ApiSchema({ name: 'BoulderWeightInput' })
export class BoulderWeightBody {
  @QuantityField({ description: 'The longest dimension.', kind: 'length', minSi: 0.01, maxSi: 10 })
  length: Quantity;

  @QuantityField({ description: 'The middle dimension.', kind: 'length', minSi: 0.01, maxSi: 10 })
  width: Quantity;

  @QuantityField({ description: 'The shortest dimension.', kind: 'length', minSi: 0.01, maxSi: 10 })
  height: Quantity;

  @ChoiceField({ description: 'How full of its box the stone is; quarried unless told, which is the careful choice for lifting.', of: FORMS, optional: true, default: 'quarried' })
  form?: StoneForm | null;

  @NumberField({ description: 'Density of the rock in kg/m3; 2,643 (165 lb/ft3) unless told.', min: 1000, max: 4000, optional: true, default: 2643 })
  densityKgPerM3?: number | null;
}

@ApiSchema({ name: 'BoulderWeight' })
export class BoulderWeightView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'The weight of the stone, in lb.' })
  weight: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The solid volume of the stone, in ft3.' })
  volume: Quantity;
}

export const BOULDER_WEIGHT = calculation({
  name: 'boulder-weight',
  title: 'Weight of a boulder from its dimensions',
  description: 'Form factor × density × the three dimensions. Source: FHWA FP-14 Table 705-1 for quarried rock. For a lift take quarried or block, which are the heavier, and see the lifting calculation.',
  input: BoulderWeightBody,
  output: BoulderWeightView,
  run: (input: BoulderWeightBody): BoulderWeightView => {
    const { weightKg, volumeM3, working } = boulderWeight([toSi(input.length), toSi(input.width), toSi(input.height)], input.form ?? 'quarried', input.densityKgPerM3 ?? 2643);
    return {
      weight: { value: convert(weightKg, 'kg', 'lb'), unit: 'lb' },
      volume: { value: convert(volumeM3, 'm3', 'ft3'), unit: 'ft3' },
      working,
      warnings: weightKg > 23 ? ['Heavier than one person should lift even in the best posture (NIOSH load constant 23 kg, 51 lb): use equipment, and follow the rules of the place.'] : [],
    };
  },
});
