import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { toSi, type Quantity } from '../../../domain/quantity/index.js';
import { DECHLORINATORS, dechlorination, THIOSULFATE_REACTIONS, type Dechlorinator, type ThiosulfateReaction } from '../../../domain/trade/chemistry/index.js';
import { ChoiceField, NumberField, QuantityField } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { DoseView, doseView } from './dose.view.js';

@ApiSchema({ name: 'DechlorinationDoseInput' })
export class DechlorinationDoseBody {
  @QuantityField({ description: 'The water that is added, not the whole pond.', kind: 'volume', minSi: 0.001, maxSi: 1e6 })
  addedVolume: Quantity;

  @NumberField({ description: 'Total chlorine in the added water as Cl2, in mg/L (ppm).', min: 0.01, max: 20 })
  chlorineMgPerL: number;

  @ChoiceField({ description: 'How the supplier disinfects; chloramine leaves ammonia behind.', of: ['free-chlorine', 'chloramine'], optional: true, default: 'free-chlorine' })
  disinfectant?: 'free-chlorine' | 'chloramine' | null;

  @ChoiceField({ description: 'The substance, in the form that is weighed.', of: DECHLORINATORS })
  form: Dechlorinator;

  @ChoiceField({ description: 'What thiosulfate ends as, which sets its ratio; tetrathionate unless told, which laboratories dose for and which is the largest. The other substances ignore it.', of: THIOSULFATE_REACTIONS, optional: true, default: 'tetrathionate' })
  reaction?: ThiosulfateReaction | null;

  @NumberField({ description: 'The substance in the product, in percent by weight; all of it unless told.', min: 0.1, max: 100, optional: true, default: 100 })
  activePercent?: number | null;
}

@ApiSchema({ name: 'DechlorinationDose' })
export class DechlorinationDoseView extends DoseView {
  @ApiProperty({ type: 'number', description: 'The ratio used: mg of the substance for each mg of chlorine (a factor by weight).' })
  ratio: number;

  @ApiProperty({ type: 'number', description: 'Ammonia nitrogen that chloramine leaves in the added water, in mg/L; 0 for free chlorine.' })
  ammoniaLeftMgPerL: number;
}

export const DECHLORINATION_DOSE = calculation({
  name: 'dechlorination-dose',
  title: 'Dechlorinator for added water',
  description: 'Added water × chlorine × ratio. Ratios by weight: thiosulfate pentahydrate 7.00 to tetrathionate, 3.50 to sulfate and sulfur, 0.875 to sulfate; anhydrous 4.46, 2.23, 0.557; sodium bisulfite 1.61 and ascorbic acid 2.5 from the field guide Disinfection of Pipelines and Storage Facilities, Table 7-2. The label and a qualified person decide the dose.',
  input: DechlorinationDoseBody,
  output: DechlorinationDoseView,
  run: (input: DechlorinationDoseBody): DechlorinationDoseView => {
    const result = dechlorination({
      addedVolumeM3: toSi(input.addedVolume),
      chlorineMgPerL: input.chlorineMgPerL,
      chloramine: input.disinfectant === 'chloramine',
      form: input.form,
      reaction: input.reaction ?? 'tetrathionate',
      activePercent: input.activePercent ?? 100,
    });
    return { ...doseView(result), ratio: result.ratio, ammoniaLeftMgPerL: result.ammoniaLeftMgPerL };
  },
});
