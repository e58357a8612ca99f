import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { AMMONIA_BASES, AMMONIA_LEVELS, unionizedAmmonia, type AmmoniaBasis, type AmmoniaLevel } from '../../../domain/trade/chemistry/index.js';
import { celsiusOf, ChoiceField, NumberField, TemperatureField, type TemperatureBody } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { ComputedView } from '../computed.view.js';

const BASES = Object.keys(AMMONIA_BASES) as AmmoniaBasis[];

@ApiSchema({ name: 'UnionizedAmmoniaInput' })
export class UnionizedAmmoniaBody {
  @NumberField({ description: 'Total ammonia as the test states it, in mg/L.', min: 0, max: 100 })
  totalMgPerL: number;

  @ChoiceField({ description: 'What the test states it as: nitrogen (NH3-N, TAN) or the molecule, 1.2159 times as much; nitrogen unless told, which is the careful choice.', of: BASES, optional: true, default: 'nitrogen' })
  basis?: AmmoniaBasis | null;

  @NumberField({ description: 'pH of the water, in pH units; the formula is stated for 6 to 10.', min: 4, max: 11 })
  pH: number;

  @TemperatureField({ description: 'Temperature of the water; the formula is stated for 0 to 30 degC.', minC: 0, maxC: 40 })
  temperature: TemperatureBody;
}

@ApiSchema({ name: 'UnionizedAmmonia' })
export class UnionizedAmmoniaView extends ComputedView {
  @ApiProperty({ type: 'number', description: 'The un-ionized share of the total, in percent.' })
  sharePercent: number;

  @ApiProperty({ type: 'number', description: 'Un-ionized ammonia in mg/L as nitrogen.' })
  unionizedMgPerL: number;

  @ApiProperty({ type: 'number', description: 'Total ammonia in mg/L as nitrogen at which this water reaches the harmful limit of 0.05 mg/L.' })
  totalAtLimitMgPerL: number;

  @ApiProperty({ type: 'string', enum: [...AMMONIA_LEVELS], description: 'low to 0.02 mg/L, raised to 0.05, harmful above, deadly from 2.' })
  level: AmmoniaLevel;
}

export const UNIONIZED_AMMONIA = calculation({
  name: 'un-ionized-ammonia',
  title: 'Un-ionized ammonia from total ammonia, pH and temperature',
  description: 'pKa = 0.09018 + 2729.92 / T. Fresh water, 0 to 30 degC, pH 6 to 10. Source: Emerson, Russo, Lund & Thurston 1975. Limits: 0.02 mg/L common practice, 0.05 and 2 University of Florida Extension FA-16.',
  input: UnionizedAmmoniaBody,
  output: UnionizedAmmoniaView,
  run: (input: UnionizedAmmoniaBody): UnionizedAmmoniaView => {
    const { share, ...rest } = unionizedAmmonia(input.totalMgPerL, input.basis ?? 'nitrogen', input.pH, celsiusOf(input.temperature));
    return { sharePercent: share * 100, ...rest };
  },
});
