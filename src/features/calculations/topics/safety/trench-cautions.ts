import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { fromSi, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { SOILS, trenchCautions, type Soil } from '../../../../domain/trade/safety/index.js';
import { ChoiceField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { CautionsView, toCautionsView } from './cautions.view.js';

@ApiSchema({ name: 'TrenchInput' })
export class TrenchBody {
  @QuantityField({ description: 'The depth of the trench or excavation.', kind: 'length', minSi: 0.01, maxSi: 30 })
  depth: Quantity;

  @ChoiceField({ description: 'The soil, as a competent person classed it; unknown unless told.', of: SOILS, optional: true, default: 'unknown' })
  soil?: Soil | null;

  @QuantityField({ description: 'From the edge to spoil and materials; counts as too near unless told.', kind: 'length', minSi: 0, maxSi: 1000, optional: true })
  spoilDistance?: Quantity | null;
}

@ApiSchema({ name: 'TrenchCautions' })
export class TrenchView extends CautionsView {
  @ApiProperty({ type: QuantityBody, description: 'How far each side would be sloped back at the usual slope of the soil, in ft: room to plan for, not a design.' })
  slopeBack: Quantity;
}

export const TRENCH_CAUTIONS = calculation({
  name: 'trench-cautions',
  title: 'Cautions for a trench or excavation',
  description: 'By depth, soil and spoil, from 29 CFR 1926.651, 1926.652 and Subpart P, Appendix B. It warns and never permits: a competent person on the site and local code decide.',
  input: TrenchBody,
  output: TrenchView,
  run: (input: TrenchBody): TrenchView => {
    const checked = trenchCautions({ depthM: toSi(input.depth), soil: input.soil ?? 'unknown', spoilDistanceM: input.spoilDistance ? toSi(input.spoilDistance) : null });
    return { slopeBack: { value: fromSi(checked.slopeBackM, 'ft'), unit: 'ft' }, ...toCautionsView(checked, 'Depth, soil and spoil against 29 CFR 1926 Subpart P') };
  },
});
