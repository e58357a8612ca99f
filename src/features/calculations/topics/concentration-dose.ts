import { ApiSchema } from '@nestjs/swagger';
import { toSi, type Quantity } from '../../../domain/quantity/index.js';
import { concentrationDose } from '../../../domain/trade/chemistry/index.js';
import { NumberField, QuantityField } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { DoseView, doseView } from './dose.view.js';

@ApiSchema({ name: 'ConcentrationDoseInput' })
export class ConcentrationDoseBody {
  @QuantityField({ description: 'The water to treat: what is really there, less rock and gravel.', kind: 'volume', minSi: 0.001, maxSi: 1e6 })
  volume: Quantity;

  @NumberField({ description: 'The active substance that the label wants in the water, in mg/L (ppm).', min: 0.0001, max: 100_000 })
  mgPerL: number;

  @NumberField({ description: 'The active substance in the product, in percent by weight; all of it unless told.', min: 0.1, max: 100, optional: true, default: 100 })
  activePercent?: number | null;
}

@ApiSchema({ name: 'ConcentrationDose' })
export class ConcentrationDoseView extends DoseView {}

export const CONCENTRATION_DOSE = calculation({
  name: 'concentration-dose',
  title: 'Product for a concentration in the water',
  description: 'Volume × concentration × 100 / percent active. Source: Virginia Department of Wildlife Resources and Mississippi State Extension, rates of application. The label and a qualified person decide the dose.',
  input: ConcentrationDoseBody,
  output: ConcentrationDoseView,
  run: (input: ConcentrationDoseBody): ConcentrationDoseView => doseView(concentrationDose(toSi(input.volume), input.mgPerL, input.activePercent ?? 100)),
});
