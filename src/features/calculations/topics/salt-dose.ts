import { ApiSchema } from '@nestjs/swagger';
import { toSi, type Quantity } from '../../../domain/quantity/index.js';
import { saltDose } from '../../../domain/trade/chemistry/index.js';
import { NumberField, QuantityField } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { DoseView, doseView } from './dose.view.js';

@ApiSchema({ name: 'SaltDoseInput' })
export class SaltDoseBody {
  @QuantityField({ description: 'The water to treat: what is really there, less rock and gravel.', kind: 'volume', minSi: 0.001, maxSi: 1e6 })
  volume: Quantity;

  @NumberField({ description: 'Salt that is in the water, in g/L (parts per thousand); none unless told.', min: 0, max: 40, optional: true, default: 0 })
  presentPpt?: number | null;

  @NumberField({ description: 'Salt that is wanted in the water, in g/L (parts per thousand; 1 is 0.1 %).', min: 0.01, max: 40 })
  targetPpt: number;
}

@ApiSchema({ name: 'SaltDose' })
export class SaltDoseView extends DoseView {}

export const SALT_DOSE = calculation({
  name: 'salt-dose',
  title: 'Salt for a concentration in the water',
  description: 'Volume × rise in concentration: 8.3454 lb in 1,000 gal for 0.1 %. Source: Virginia Department of Wildlife Resources, rates of application. The label and a qualified person decide the dose; salted water must not go to drains, streams or planted ground.',
  input: SaltDoseBody,
  output: SaltDoseView,
  run: (input: SaltDoseBody): SaltDoseView => doseView(saltDose(toSi(input.volume), input.presentPpt ?? 0, input.targetPpt)),
});
