import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { convert, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { netWater, type Fill } from '../../../../domain/trade/stone/index.js';
import { ListField, NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';

@ApiSchema({ name: 'StoneInWater', description: 'Stone in a pond, by its mass.' })
export class StoneInWaterBody {
  @QuantityField({ description: 'The mass of the stone.', kind: 'mass', minSi: 0, maxSi: 10_000_000 })
  mass: Quantity;

  @NumberField({ description: 'Density of the rock in kg/m3; 2,643 (165 lb/ft3) unless told.', min: 1000, max: 4000, optional: true, default: 2643 })
  densityKgPerM3?: number | null;

  @NumberField({ description: 'How much of it lies below the water line, in percent; 100 unless told.', min: 0, max: 100, optional: true, default: 100 })
  submergedPercent?: number | null;
}

@ApiSchema({ name: 'GravelInWater', description: 'Gravel in a pond, by its volume.' })
export class GravelInWaterBody {
  @QuantityField({ description: 'The volume of the gravel with its voids.', kind: 'volume', minSi: 0, maxSi: 1_000_000 })
  volume: Quantity;

  @NumberField({ description: 'Share of it that is voids, in m3 per m3; 0.4 unless told.', min: 0, max: 0.9, optional: true, default: 0.4 })
  voidFraction?: number | null;

  @NumberField({ description: 'How much of it lies below the water line, in percent; 100 unless told.', min: 0, max: 100, optional: true, default: 100 })
  submergedPercent?: number | null;
}

@ApiSchema({ name: 'NetWaterInput' })
export class NetWaterBody {
  @QuantityField({ description: 'The water volume without rock and gravel.', kind: 'volume', minSi: 0.001, maxSi: 10_000_000 })
  waterVolume: Quantity;

  @ListField(() => StoneInWaterBody, { description: 'The stone in the water.', most: 100, optional: true })
  stone?: StoneInWaterBody[] | null;

  @ListField(() => GravelInWaterBody, { description: 'The gravel in the water.', most: 100, optional: true })
  gravel?: GravelInWaterBody[] | null;
}

@ApiSchema({ name: 'NetWater' })
export class NetWaterView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'The water that rock and gravel displace, in gal.' })
  displaced: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The water that is left, in gal: the volume for doses and turnover.' })
  netVolume: Quantity;
}

export const NET_WATER = calculation({
  name: 'net-water',
  title: 'Water volume with rock and gravel taken off',
  description: 'The gross volume less the solids of stone and gravel below the water line (Archimedes). Doses by the gross volume would be too strong.',
  input: NetWaterBody,
  output: NetWaterView,
  run: (input: NetWaterBody): NetWaterView => {
    const stone = (input.stone ?? []).map(({ mass, densityKgPerM3, submergedPercent }): Fill => ({ kind: 'stone', massKg: toSi(mass), densityKgPerM3: densityKgPerM3 ?? 2643, submergedPercent: submergedPercent ?? 100 }));
    const gravel = (input.gravel ?? []).map(({ volume, voidFraction, submergedPercent }): Fill => ({ kind: 'gravel', bulkVolumeM3: toSi(volume), voidFraction: voidFraction ?? 0.4, submergedPercent: submergedPercent ?? 100 }));
    const { displacedM3, netM3, working, warnings } = netWater(toSi(input.waterVolume), [...stone, ...gravel]);
    return { displaced: { value: convert(displacedM3, 'm3', 'gal'), unit: 'gal' }, netVolume: { value: convert(netM3, 'm3', 'gal'), unit: 'gal' }, working, warnings };
  },
});
