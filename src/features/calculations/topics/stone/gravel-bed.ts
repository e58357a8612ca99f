import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { convert, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { gravelBed } from '../../../../domain/trade/stone/index.js';
import { NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { purchaseFigures, PurchaseView, tons } from './purchase.view.js';

@ApiSchema({ name: 'GravelBedInput' })
export class GravelBedBody {
  @QuantityField({ description: 'The area that is covered.', kind: 'area', minSi: 0.001, maxSi: 1_000_000 })
  area: Quantity;

  @QuantityField({ description: 'The depth of the layer.', kind: 'length', minSi: 0.001, maxSi: 10 })
  depth: Quantity;

  @NumberField({ description: 'Dry density with the voids in kg/m3; 1,682 (105 lb/ft3) unless told.', min: 500, max: 3000, optional: true, default: 1682 })
  bulkDensityKgPerM3?: number | null;

  @NumberField({ description: 'Share of the layer that is voids, in m3 per m3; 0.4 unless told, for clean angular stone of one size.', min: 0, max: 0.9, optional: true, default: 0.4 })
  voidFraction?: number | null;

  @QuantityField({ description: 'The size of the largest stone in the layer; not compared with the depth unless told.', kind: 'length', minSi: 0.001, maxSi: 3, optional: true })
  largestStone?: Quantity | null;

  @QuantityField({ description: 'Gravel on the site that can be used again; none unless told.', kind: 'mass', minSi: 0, maxSi: 10_000_000, optional: true })
  reclaimed?: Quantity | null;
}

@ApiSchema({ name: 'GravelBed' })
export class GravelBedView extends PurchaseView {
  @ApiProperty({ type: QuantityBody, description: 'The dry gravel, in ton (short tons of 2,000 lb).' })
  mass: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The volume of the layer, in yd3.' })
  volume: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The water that its voids hold when flooded, in gal.' })
  waterHeld: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The water that its grains displace when flooded, in gal.' })
  waterDisplaced: Quantity;
}

export const GRAVEL_BED = calculation({
  name: 'gravel-bed',
  title: 'Gravel by area and depth',
  description: 'Area × depth × dry bulk density, the water in its voids and the water that its grains displace, and what reclaimed gravel leaves to buy. A layer is no thinner than its largest stone: EM 1110-2-1601.',
  input: GravelBedBody,
  output: GravelBedView,
  run: (input: GravelBedBody): GravelBedView => {
    const bed = gravelBed({
      areaM2: toSi(input.area),
      depthM: toSi(input.depth),
      bulkDensityKgPerM3: input.bulkDensityKgPerM3 ?? 1682,
      voidFraction: input.voidFraction ?? 0.4,
      largestStoneM: input.largestStone ? toSi(input.largestStone) : null,
      reclaimedKg: input.reclaimed ? toSi(input.reclaimed) : 0,
    });
    return {
      mass: tons(bed.massKg),
      volume: { value: convert(bed.bulkVolumeM3, 'm3', 'yd3'), unit: 'yd3' },
      waterHeld: { value: convert(bed.waterHeldM3, 'm3', 'gal'), unit: 'gal' },
      waterDisplaced: { value: convert(bed.waterDisplacedM3, 'm3', 'gal'), unit: 'gal' },
      ...purchaseFigures(bed),
      working: bed.working,
      warnings: bed.warnings,
    };
  },
});
