import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { DomainError } from '../../../domain/errors.js';
import { toSi, type Quantity } from '../../../domain/quantity/index.js';
import { oxygenCautions, oxygenSaturation, standardPressureMmHg } from '../../../domain/trade/chemistry/index.js';
import { celsiusOf, NumberField, QuantityField, TemperatureField, type TemperatureBody } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { ComputedView } from '../computed.view.js';

@ApiSchema({ name: 'OxygenSaturationInput' })
export class OxygenSaturationBody {
  @TemperatureField({ description: 'Temperature of the water.', minC: 0, maxC: 40 })
  temperature: TemperatureBody;

  @QuantityField({ description: 'Altitude above sea level, for the pressure of the standard atmosphere; sea level unless told. Not together with a pressure.', kind: 'length', minSi: -430, maxSi: 5000, optional: true })
  altitude?: Quantity | null;

  @NumberField({ description: 'Air pressure at the place in mmHg, not corrected to sea level as weather reports are.', min: 400, max: 820, optional: true })
  pressureMmHg?: number | null;

  @NumberField({ description: 'A reading of dissolved oxygen in mg/L, best taken at dawn.', min: 0, max: 40, optional: true })
  measuredMgPerL?: number | null;
}

@ApiSchema({ name: 'OxygenSaturation' })
export class OxygenSaturationView extends ComputedView {
  @ApiProperty({ type: 'number', description: 'Dissolved oxygen at saturation, in mg/L.' })
  saturationMgPerL: number;

  @ApiProperty({ type: 'number', description: 'The air pressure it holds for, in mmHg.' })
  pressureMmHg: number;

  @ApiProperty({ type: 'number', nullable: true, description: 'The reading as a percentage of saturation, in percent; null without one.' })
  saturatedPercent: number | null;
}

export const OXYGEN_SATURATION = calculation({
  name: 'oxygen-saturation',
  title: 'Dissolved oxygen at saturation',
  description: 'Fresh water, 0 to 40 degC, by temperature and altitude or pressure. Source: Benson & Krause 1984, as in Standard Methods 4500-O. Salt lowers it, which this leaves out.',
  input: OxygenSaturationBody,
  output: OxygenSaturationView,
  run: ({ temperature, altitude, pressureMmHg, measuredMgPerL }: OxygenSaturationBody): OxygenSaturationView => {
    if (altitude && typeof pressureMmHg === 'number') throw DomainError.at('/altitude', 'Give the altitude or the pressure at the place, not both.');
    const pressure = pressureMmHg ?? standardPressureMmHg(altitude ? toSi(altitude) : 0);
    const { saturationMgPerL, working, warnings } = oxygenSaturation(celsiusOf(temperature), pressure);
    const measured = measuredMgPerL ?? null;
    return {
      saturationMgPerL,
      pressureMmHg: pressure,
      saturatedPercent: measured === null ? null : (measured / saturationMgPerL) * 100,
      working,
      warnings: measured === null ? warnings : [...warnings, ...oxygenCautions(measured, saturationMgPerL)],
    };
  },
});
