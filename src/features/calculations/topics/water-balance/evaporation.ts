import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { convert, fromSi, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { evaporation } from '../../../../domain/trade/water-balance/index.js';
import { celsiusOf, NumberField, QuantityBody, QuantityField, TemperatureBody, TemperatureField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';

const M_PER_S_PER_MPH = 0.44704;

@ApiSchema({ name: 'EvaporationInput' })
export class EvaporationBody {
  @QuantityField({ description: 'The water surface.', kind: 'area', minSi: 0.01, maxSi: 10_000_000 })
  area: Quantity;

  @TemperatureField({ description: 'The temperature of the water at its surface.', minC: 0, maxC: 50 })
  waterTemperature: TemperatureBody;

  @TemperatureField({ description: 'The temperature of the air.', minC: 0, maxC: 50 })
  airTemperature: TemperatureBody;

  @NumberField({ description: 'Relative humidity of the air in percent.', min: 0, max: 100 })
  relativeHumidityPercent: number;

  @NumberField({ description: 'Wind over the water in miles per hour (mph); calm unless told.', min: 0, max: 60, optional: true, default: 0 })
  windMph?: number | null;
}

@ApiSchema({ name: 'Evaporation' })
export class EvaporationView extends ComputedView {
  @ApiProperty({ type: 'number', description: 'Mass that evaporates each hour, in lb.' })
  poundsPerHour: number;

  @ApiProperty({ type: 'number', description: 'The same for a surface that nothing moves, in lb each hour: 0.74 of the equation.' })
  undisturbedPoundsPerHour: number;

  @ApiProperty({ type: QuantityBody, description: 'Water lost in a day, in gal.' })
  perDay: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'Drop of the level in a day, in inches.' })
  depthPerDay: Quantity;
}

export const EVAPORATION = calculation({
  name: 'evaporation',
  title: 'Evaporation from a water surface',
  description: 'W = A × (pw − pa) × (95 + 0.425 V) / Y, saturation by Hyland and Wexler. Made for indoor pools; undisturbed ones were measured at 74 % of it (ASHRAE Transactions 104(1A), 1998, paper 4146). Temperatures 0 to 50 degC. Splash and wicking are not in it.',
  input: EvaporationBody,
  output: EvaporationView,
  run: (input: EvaporationBody): EvaporationView => {
    const { kgPerHour, undisturbedKgPerHour, m3PerDay, depthMPerDay, working, warnings } = evaporation({
      areaM2: toSi(input.area),
      waterC: celsiusOf(input.waterTemperature),
      airC: celsiusOf(input.airTemperature),
      relativeHumidityPercent: input.relativeHumidityPercent,
      windMPerS: (input.windMph ?? 0) * M_PER_S_PER_MPH,
    });
    return {
      poundsPerHour: convert(kgPerHour, 'kg', 'lb'),
      undisturbedPoundsPerHour: convert(undisturbedKgPerHour, 'kg', 'lb'),
      perDay: { value: fromSi(m3PerDay, 'gal'), unit: 'gal' },
      depthPerDay: { value: fromSi(depthMPerDay, 'in'), unit: 'in' },
      working,
      warnings,
    };
  },
});
