import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { convert, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { stoneEdge } from '../../../../domain/trade/stone/index.js';
import { NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { purchaseFigures, PurchaseView, tons } from './purchase.view.js';

@ApiSchema({ name: 'StoneEdgeInput' })
export class StoneEdgeBody {
  @QuantityField({ description: 'The length of the edge.', kind: 'length', minSi: 0.01, maxSi: 10_000 })
  length: Quantity;

  @QuantityField({ description: 'The height of the stacked stone.', kind: 'length', minSi: 0.01, maxSi: 10 })
  height: Quantity;

  @QuantityField({ description: 'The thickness of the stacked stone, front to back.', kind: 'length', minSi: 0.01, maxSi: 10 })
  thickness: Quantity;

  @NumberField({ description: 'Density of the solid rock in kg/m3; 2,643 (165 lb/ft3) unless told.', min: 1000, max: 4000, optional: true, default: 2643 })
  densityKgPerM3?: number | null;

  @NumberField({ description: 'Share of the edge that is gaps, in m3 per m3; 0.3 unless told (common practice).', min: 0, max: 0.9, optional: true, default: 0.3 })
  voidFraction?: number | null;

  @QuantityField({ description: 'Stone on the site that can be used again; none unless told.', kind: 'mass', minSi: 0, maxSi: 10_000_000, optional: true })
  reclaimed?: Quantity | null;
}

@ApiSchema({ name: 'StoneEdge' })
export class StoneEdgeView extends PurchaseView {
  @ApiProperty({ type: QuantityBody, description: 'The stone in the edge, in ton (short tons of 2,000 lb).' })
  mass: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The volume of the edge with its gaps, in yd3.' })
  volume: Quantity;
}

export const STONE_EDGE = calculation({
  name: 'stone-edge',
  title: 'Stone for a stacked edge',
  description: 'Length × height × thickness × rock density × (1 − void fraction), and what reclaimed stone leaves to buy. Rock density 150 to 170 lb/ft3 (2,400 to 2,720 kg/m3): USACE streambank manual, App. A. An edge above 3 ft is a retaining wall: local code and a licensed designer decide.',
  input: StoneEdgeBody,
  output: StoneEdgeView,
  run: (input: StoneEdgeBody): StoneEdgeView => {
    const edge = stoneEdge({
      lengthM: toSi(input.length),
      heightM: toSi(input.height),
      thicknessM: toSi(input.thickness),
      densityKgPerM3: input.densityKgPerM3 ?? 2643,
      voidFraction: input.voidFraction ?? 0.3,
      reclaimedKg: input.reclaimed ? toSi(input.reclaimed) : 0,
    });
    return { mass: tons(edge.massKg), volume: { value: convert(edge.bulkVolumeM3, 'm3', 'yd3'), unit: 'yd3' }, ...purchaseFigures(edge), working: edge.working, warnings: edge.warnings };
  },
});
