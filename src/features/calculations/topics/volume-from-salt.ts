import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { convert, toSi, type Quantity } from '../../../domain/quantity/index.js';
import { volumeFromSalt } from '../../../domain/trade/chemistry/index.js';
import { NumberField, QuantityBody, QuantityField } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { ComputedView } from '../computed.view.js';

@ApiSchema({ name: 'VolumeFromSaltInput' })
export class VolumeFromSaltBody {
  @QuantityField({ description: 'The salt that was dissolved.', kind: 'mass', minSi: 0.001, maxSi: 1e5 })
  salt: Quantity;

  @NumberField({ description: 'The reading before, in g/L (parts per thousand).', min: 0, max: 40 })
  beforePpt: number;

  @NumberField({ description: 'The reading when all is mixed, in g/L (parts per thousand).', min: 0, max: 40 })
  afterPpt: number;

  @NumberField({ description: 'How far the rise between the readings may be off, in g/L; a tenth unless told.', min: 0, max: 5, optional: true, default: 0.1 })
  errorPpt?: number | null;
}

@ApiSchema({ name: 'VolumeFromSalt' })
export class VolumeFromSaltView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'The water in the pond, in gal.' })
  volume: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The least that it may be, by the error of the readings, in gal.' })
  least: Quantity;

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'The most that it may be, in gal; null when the rise is not more than its error.' })
  most: Quantity | null;
}

const gallons = (m3: number): Quantity => ({ value: convert(m3, 'm3', 'gal'), unit: 'gal' });

export const VOLUME_FROM_SALT = calculation({
  name: 'volume-from-salt',
  title: 'Volume of a pond from dissolved salt',
  description: 'Salt / rise of the reading: pounds × 119.83 = gallons at a rise of 1 g/L (the trade rounds to 120). It finds the net water of a pond that can not be measured. Mind plants, and where the water goes afterwards.',
  input: VolumeFromSaltBody,
  output: VolumeFromSaltView,
  run: (input: VolumeFromSaltBody): VolumeFromSaltView => {
    const { volumeM3, leastM3, mostM3, working, warnings } = volumeFromSalt(toSi(input.salt), input.beforePpt, input.afterPpt, input.errorPpt ?? 0.1);
    return { volume: gallons(volumeM3), least: gallons(leastM3), most: mostM3 === null ? null : gallons(mostM3), working, warnings };
  },
});
