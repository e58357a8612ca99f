import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ChoiceField, CostCodeField, DecimalField, LocalDateField, OwnIdField, TextField } from '../../../platform/http/fields/index.js';
import { ListQuery } from '../../../platform/http/lists.js';

const BASES = ['all-pay', 'straight-pay'] as const;
type Base = (typeof BASES)[number];

@ApiSchema({ name: 'BurdenRateInput' })
export class BurdenRateBody {
  @OwnIdField()
  id?: string | null;

  @CostCodeField({ description: 'What it is, in short; a later rate of the same code takes its place.', example: 'medicare' })
  code: string;

  @TextField({ description: 'The name.', max: 200, example: 'Medicare, employer\'s part' })
  name: string;

  @DecimalField({ description: 'Percent of the wages; 0 ends the code.', min: '0', max: '1000', scale: 4, example: '1.45' })
  percent: string;

  @DecimalField({ description: 'It is due on this much of a person\'s wages in a calendar year, in the company\'s currency; without it there is no end.', min: '0', max: '999999999999', scale: 4, optional: true, example: '7000.00' })
  yearlyWageCap?: string | null;

  @ChoiceField({ description: 'The wages that it is counted on: all of them, or those without the overtime premium, as some insurers and states have it.', of: BASES, example: 'all-pay' })
  base: Base;

  @LocalDateField({ description: 'It applies to workweeks whose last day is this day or later.' })
  effectiveFrom: string;
}

export class BurdenRateListQuery extends ListQuery {
  @CostCodeField({ description: 'Only the rates of this code.', optional: true, example: 'medicare' })
  code?: string;
}

@ApiSchema({ name: 'BurdenRate', description: 'One thing that the company pays on top of wages. While any is in force, these take the place of people\'s own `burdenPercent`.' })
export class BurdenRateView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The rate.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'What it is, in short.', example: 'medicare' })
  code: string;

  @ApiProperty({ type: 'string', description: 'The name.' })
  name: string;

  @ApiProperty({ type: 'string', description: 'Percent of the wages.' })
  percent: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'It is due on this much of a person\'s wages in a calendar year, in the company\'s currency; null for no end.' })
  yearlyWageCap: string | null;

  @ApiProperty({ type: 'string', enum: [...BASES], description: 'The wages that it is counted on.' })
  base: Base;

  @ApiProperty({ type: 'string', format: 'date', description: 'It applies to workweeks whose last day is this day or later.' })
  effectiveFrom: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the rate was made; of two of a code with the same `effectiveFrom`, the one made last is in force.' })
  createdAt: string;
}
