import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { fromSi, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { PAN_COEFFICIENT, panEvaporation } from '../../../../domain/trade/water-balance/index.js';
import { NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';

@ApiSchema({ name: 'PanEvaporationInput' })
export class PanEvaporationBody {
  @QuantityField({ description: 'The water surface.', kind: 'area', minSi: 0.01, maxSi: 10_000_000 })
  area: Quantity;

  @QuantityField({ description: 'Evaporation from a Class A pan over the period, from an evaporation atlas.', kind: 'length', minSi: 0, maxSi: 10 })
  panEvaporation: Quantity;

  @NumberField({ description: 'From the pan to open water, a factor; 0.7 unless told, which holds over a year.', min: 0.3, max: 1.2, optional: true, default: PAN_COEFFICIENT })
  panCoefficient?: number | null;
}

@ApiSchema({ name: 'PanEvaporation' })
export class PanEvaporationView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'Evaporation from the pond over the period of the pan figure, in inches.' })
  depth: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The same as a volume, in gal.' })
  volume: Quantity;
}

export const PAN_EVAPORATION = calculation({
  name: 'pan-evaporation',
  title: 'Evaporation from an atlas of pan evaporation',
  description: '0.7 × Class A pan evaporation over a year (NOAA Technical Reports NWS 33 and 34) × the water surface.',
  input: PanEvaporationBody,
  output: PanEvaporationView,
  run: (input: PanEvaporationBody): PanEvaporationView => {
    const { depthM, volumeM3, working, warnings } = panEvaporation(toSi(input.area), toSi(input.panEvaporation), input.panCoefficient ?? PAN_COEFFICIENT);
    return { depth: { value: fromSi(depthM, 'in'), unit: 'in' }, volume: { value: fromSi(volumeM3, 'gal'), unit: 'gal' }, working, warnings };
  },
});
