import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { decimal } from '../../../../domain/decimal.js';
import { DomainError } from '../../../../domain/errors.js';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { WATER_PRICE_BASES, waterCost, type WaterPriceBasis } from '../../../../domain/trade/water-balance/index.js';
import { OFFICE } from '../../../../platform/auth/actor.js';
import { ChoiceField, MoneyBody, MoneyField, NestedField, QuantityField, toMoneyBody } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';

@ApiSchema({ name: 'MeteredWater', description: 'Water from the meter.' })
export class MeteredWaterBody {
  @MoneyField({ description: 'The price of water, sewer charge included where it is billed.', sign: 'not-negative' })
  price: MoneyBody;

  @ChoiceField({ description: 'How much water the price is for.', of: Object.keys(WATER_PRICE_BASES) })
  per: WaterPriceBasis;
}

@ApiSchema({ name: 'TruckedWater', description: 'Water by tank truck.' })
export class TruckedWaterBody {
  @MoneyField({ description: 'The price of one load, brought to the site.', sign: 'not-negative' })
  price: MoneyBody;

  @QuantityField({ description: 'What one load brings.', kind: 'volume', minSi: 0.1, maxSi: 100 })
  load: Quantity;
}

@ApiSchema({ name: 'WaterCostInput' })
export class WaterCostBody {
  @QuantityField({ description: 'The water that is needed.', kind: 'volume', minSi: 0, maxSi: 10_000_000 })
  volume: Quantity;

  @NestedField(() => MeteredWaterBody, { description: 'The price from the meter.', optional: true })
  metered?: MeteredWaterBody | null;

  @NestedField(() => TruckedWaterBody, { description: 'The price by truck, in the same currency.', optional: true })
  trucked?: TruckedWaterBody | null;
}

@ApiSchema({ name: 'WaterCost' })
export class WaterCostView extends ComputedView {
  @ApiProperty({ type: MoneyBody, nullable: true, description: 'The cost from the meter; null without its price.' })
  meteredCost: MoneyBody | null;

  @ApiProperty({ type: MoneyBody, nullable: true, description: 'The cost by truck; null without its price.' })
  truckedCost: MoneyBody | null;

  @ApiProperty({ type: 'integer', nullable: true, description: 'The number of truck loads.' })
  loads: number | null;

  @ApiProperty({ type: 'string', enum: ['metered', 'trucked'], nullable: true, description: 'The cheaper one of both; null when only one has a price.' })
  cheaper: 'metered' | 'trucked' | null;
}

export const WATER_COST = calculation({
  name: 'water-cost',
  title: 'What water costs, from the meter and by truck',
  description: 'Volume × price from the meter, whole loads × price by truck, each rounded half up once. Definition. Takes and gives prices, so it is for owner and estimator.',
  input: WaterCostBody,
  output: WaterCostView,
  roles: OFFICE,
  run: ({ volume, metered, trucked }: WaterCostBody): WaterCostView => {
    const currency = metered?.price.currency ?? trucked?.price.currency ?? '';
    if (trucked && trucked.price.currency !== currency) throw DomainError.at('/trucked/price/currency', `Both prices must be in one currency; the other is in ${currency}.`);
    const cost = waterCost(
      toSi(volume),
      metered ? { amount: decimal(metered.price.amount), basis: metered.per } : null,
      trucked ? { amount: decimal(trucked.price.amount), loadM3: toSi(trucked.load) } : null,
      currency,
    );
    return {
      meteredCost: cost.metered && toMoneyBody(cost.metered, currency),
      truckedCost: cost.trucked && toMoneyBody(cost.trucked, currency),
      loads: cost.loads,
      cheaper: cost.cheaper,
      working: cost.working,
      warnings: [],
    };
  },
});
