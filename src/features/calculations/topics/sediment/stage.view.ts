import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../../../domain/quantity/index.js';
import type { Stage } from '../../../../domain/trade/sediment/index.js';
import { NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { figure } from './figures.js';

@ApiSchema({ name: 'SedimentStage', description: 'Volume and weight of the sediment at one stage.' })
export class SedimentStageView {
  @ApiProperty({ type: QuantityBody, description: 'The volume at this stage, in yd3.' })
  volume: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The weight with its water, in short tons.' })
  weight: Quantity;
}

export function stageView({ volumeM3, weightKg }: Stage): SedimentStageView {
  return { volume: figure(volumeM3, 'yd3'), weight: figure(weightKg, 'ton') };
}

/** What weight and draining of sediment are computed from. */
export abstract class SedimentBody {
  @QuantityField({ description: 'The sediment in place, before digging.', kind: 'volume', minSi: 0, maxSi: 1_000_000 })
  inPlaceVolume: Quantity;

  @NumberField({ description: 'Water in place in percent of the dry solids by weight (over 100 is usual): 150 percent unless told.', min: 10, max: 2000, optional: true, default: 150 })
  waterPercent?: number | null;

  @NumberField({ description: 'Specific gravity of the solids, a factor of the density of water: 2.65 unless told, for mineral sediment; less for organic.', min: 1.1, max: 3.5, optional: true, default: 2.65 })
  gravity?: number | null;

  @NumberField({ description: 'How much more room it takes when dug, in percent of its volume in place: 25 percent unless told.', min: 0, max: 100, optional: true, default: 25 })
  bulkingPercent?: number | null;
}
