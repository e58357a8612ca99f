import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { toSi, type Quantity } from '../../../domain/quantity/index.js';
import { ALKALINITY_FORMS, alkalinityDose, type AlkalinityForm } from '../../../domain/trade/chemistry/index.js';
import { ChoiceField, NumberField, QuantityField } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { DoseView, doseView } from './dose.view.js';

const FORMS = Object.keys(ALKALINITY_FORMS) as AlkalinityForm[];

@ApiSchema({ name: 'AlkalinityDoseInput' })
export class AlkalinityDoseBody {
  @QuantityField({ description: 'The water to treat: what is really there, less rock and gravel.', kind: 'volume', minSi: 0.001, maxSi: 1e6 })
  volume: Quantity;

  @NumberField({ description: 'Alkalinity that the water has, in mg/L as CaCO3.', min: 0, max: 1000 })
  presentMgPerL: number;

  @NumberField({ description: 'Alkalinity that is wanted, in mg/L as CaCO3.', min: 1, max: 1000 })
  targetMgPerL: number;

  @ChoiceField({ description: 'The substance that is weighed; baking soda (bicarbonate) unless told.', of: FORMS, optional: true, default: 'sodium-bicarbonate' })
  form?: AlkalinityForm | null;

  @NumberField({ description: 'The substance in the product, in percent by weight; all of it unless told.', min: 0.1, max: 100, optional: true, default: 100 })
  activePercent?: number | null;

  @NumberField({ description: 'The most that one day may change, in mg/L as CaCO3; 20 to 30 is common practice.', min: 1, max: 100, optional: true, default: 25 })
  mostPerDayMgPerL?: number | null;
}

@ApiSchema({ name: 'AlkalinityDose' })
export class AlkalinityDoseView extends DoseView {
  @ApiProperty({ type: 'number', description: 'The ratio used: mg of the substance for each mg of alkalinity as CaCO3 (a factor by weight).' })
  ratio: number;

  @ApiProperty({ type: 'integer', description: 'How many days to spread it over, in equal parts.' })
  days: number;
}

export const ALKALINITY_DOSE = calculation({
  name: 'alkalinity-dose',
  title: 'Bicarbonate or soda ash to raise alkalinity',
  description: 'Volume × rise × equivalent weight / 50.0435: 1.67867 for sodium bicarbonate (0.1401 lb in 1,000 gal for 10 mg/L), 1.05896 for sodium carbonate, by weight, derived from molar masses. The label and a qualified person decide the dose.',
  input: AlkalinityDoseBody,
  output: AlkalinityDoseView,
  run: (input: AlkalinityDoseBody): AlkalinityDoseView => {
    const { volume, presentMgPerL, targetMgPerL, form, activePercent, mostPerDayMgPerL } = input;
    const result = alkalinityDose({
      volumeM3: toSi(volume),
      presentMgPerL,
      targetMgPerL,
      form: form ?? 'sodium-bicarbonate',
      activePercent: activePercent ?? 100,
      mostPerDayMgPerL: mostPerDayMgPerL ?? 25,
    });
    return { ...doseView(result), ratio: result.ratio, days: result.days };
  },
});
