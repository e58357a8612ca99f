import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { fromSi, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { makeUpWater } from '../../../../domain/trade/water-balance/index.js';
import { NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';

@ApiSchema({ name: 'MakeUpWaterInput' })
export class MakeUpWaterBody {
  @QuantityField({ description: 'The water surface.', kind: 'area', minSi: 0.01, maxSi: 10_000_000 })
  area: Quantity;

  @QuantityField({ description: 'Evaporation on an average day of the season, as a drop of the level.', kind: 'length', minSi: 0, maxSi: 0.1 })
  evaporationPerDay: Quantity;

  @QuantityField({ description: 'Rain on an average day of the season; none unless told.', kind: 'length', minSi: 0, maxSi: 0.5, optional: true })
  rainPerDay?: Quantity | null;

  @QuantityField({ description: 'Leakage in a day, from a bucket test; none unless told.', kind: 'volume', minSi: 0, maxSi: 100_000, optional: true })
  leakPerDay?: Quantity | null;

  @QuantityField({ description: 'Splash and drift of waterfalls and fountains in a day; none unless told.', kind: 'volume', minSi: 0, maxSi: 100_000, optional: true })
  splashPerDay?: Quantity | null;

  @QuantityField({ description: 'Water changed on purpose, for an average day; none unless told.', kind: 'volume', minSi: 0, maxSi: 100_000, optional: true })
  changesPerDay?: Quantity | null;

  @NumberField({ description: 'Length of the season in days.', min: 1, max: 366 })
  days: number;
}

@ApiSchema({ name: 'MakeUpWater' })
export class MakeUpWaterView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'All losses of a day, in gal.' })
  lossPerDay: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'What rain brings on an average day, in gal.' })
  rainGainPerDay: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'What must be topped up over the season, in gal.' })
  makeUp: Quantity;
}

export const MAKE_UP_WATER = calculation({
  name: 'make-up-water',
  title: 'Water to top up over a season',
  description: '(Evaporation + leak + splash + water changes − rain) × days, not below 0. Definition. Rain counts in full, though a storm overflows, so the figure is the least.',
  input: MakeUpWaterBody,
  output: MakeUpWaterView,
  run: (input: MakeUpWaterBody): MakeUpWaterView => {
    const optional = (quantity?: Quantity | null): number => (quantity ? toSi(quantity) : 0);
    const { lossM3PerDay, rainM3PerDay, makeUpM3, working, warnings } = makeUpWater({
      areaM2: toSi(input.area),
      evaporationMPerDay: toSi(input.evaporationPerDay),
      rainMPerDay: optional(input.rainPerDay),
      leakM3PerDay: optional(input.leakPerDay),
      splashM3PerDay: optional(input.splashPerDay),
      changesM3PerDay: optional(input.changesPerDay),
      days: input.days,
    });
    const gallons = (m3: number): Quantity => ({ value: fromSi(m3, 'gal'), unit: 'gal' });
    return { lossPerDay: gallons(lossM3PerDay), rainGainPerDay: gallons(rainM3PerDay), makeUp: gallons(makeUpM3), working, warnings };
  },
});
