import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { reclaimedStone, STONE_FORMS, type StoneForm } from '../../../../domain/trade/stone/index.js';
import { ChoiceField, IntegerField, ListField, NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { purchaseFigures, PurchaseView, tons } from './purchase.view.js';

@ApiSchema({ name: 'StonePile', description: 'Stones of about one size.' })
export class StonePileBody {
  @QuantityField({ description: 'The longest dimension of one stone.', kind: 'length', minSi: 0.01, maxSi: 10 })
  length: Quantity;

  @QuantityField({ description: 'The middle dimension of one stone.', kind: 'length', minSi: 0.01, maxSi: 10 })
  width: Quantity;

  @QuantityField({ description: 'The shortest dimension of one stone.', kind: 'length', minSi: 0.01, maxSi: 10 })
  height: Quantity;

  @ChoiceField({ description: 'How full of its box a stone is; rounded unless told, which counts the least.', of: Object.keys(STONE_FORMS), optional: true, default: 'rounded' })
  form?: StoneForm | null;

  @IntegerField({ description: 'The number of stones of this size.', min: 1, max: 100_000 })
  count: number;
}

@ApiSchema({ name: 'ReclaimedStoneInput' })
export class ReclaimedStoneBody {
  @ListField(() => StonePileBody, { description: 'The stones on the site that are sound enough to use again, by size.', fewest: 1, most: 100 })
  piles: StonePileBody[];

  @QuantityField({ description: 'The stone that the work needs.', kind: 'mass', minSi: 0, maxSi: 10_000_000 })
  needed: Quantity;

  @NumberField({ description: 'Density of the rock in kg/m3; 2,643 (165 lb/ft3) unless told.', min: 1000, max: 4000, optional: true, default: 2643 })
  densityKgPerM3?: number | null;
}

@ApiSchema({ name: 'ReclaimedStone' })
export class ReclaimedStoneView extends PurchaseView {
  @ApiProperty({ type: QuantityBody, description: 'The stone on the site, in ton (short tons of 2,000 lb).' })
  reclaimed: Quantity;
}

export const RECLAIMED_STONE = calculation({
  name: 'reclaimed-stone',
  title: 'Reclaimed stone against what is bought',
  description: 'The weight of the stones on the site by size and count, and what they leave to buy. Form factor × density × the three dimensions of each, as in the calculation of a boulder.',
  input: ReclaimedStoneBody,
  output: ReclaimedStoneView,
  run: (input: ReclaimedStoneBody): ReclaimedStoneView => {
    const piles = input.piles.map(({ length, width, height, form, count }) => ({ dimensionsM: [toSi(length), toSi(width), toSi(height)] as const, form: form ?? 'rounded', count }));
    const stone = reclaimedStone(piles, input.densityKgPerM3 ?? 2643, toSi(input.needed));
    return { reclaimed: tons(stone.massKg), ...purchaseFigures(stone), working: stone.working, warnings: [] };
  },
});
