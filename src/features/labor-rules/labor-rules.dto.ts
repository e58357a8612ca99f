import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { type Unit, UNITS } from '../../domain/quantity/index.js';
import { ChoiceField, CostCodeField, DecimalField, LocalDateField, OwnIdField, TextField } from '../../platform/http/fields/index.js';
import { ListQuery } from '../../platform/http/lists.js';
import { RULE_QUANTITIES, type RuleQuantity } from './rule-quantity.js';

const HOURS = { min: '0', max: '10000', scale: 6 };

@ApiSchema({ name: 'LaborRuleInput' })
export class LaborRuleBody {
  @OwnIdField()
  id?: string | null;

  @CostCodeField({ description: 'The cost code whose hours the rule gives.' })
  costCode: string;

  @TextField({ description: 'The name; a priced line without a description of its own shows it to the customer.', max: 200, example: 'Drain, clean out and rinse down' })
  name: string;

  @ChoiceField({ description: 'The quantity that the hours depend on: one of the takeoff\'s, or count for things whose number the quote says itself (it needs no survey).', of: RULE_QUANTITIES, example: 'sedimentVolume' })
  quantity: RuleQuantity;

  @ChoiceField({ description: 'The unit of the quantity that `hoursPerUnit` is for; it must be of the quantity\'s kind (each for count).', of: UNITS, example: 'yd3' })
  unit: Unit;

  @DecimalField({ ...HOURS, description: 'Hours before the first unit.', example: '3' })
  setupHours: string;

  @DecimalField({ ...HOURS, description: 'Hours for each unit, in hours per `unit`.', example: '1.75' })
  hoursPerUnit: string;

  @DecimalField({ ...HOURS, description: 'The fewest hours, however small the quantity.', example: '6' })
  minimumHours: string;

  @LocalDateField({ description: 'The first survey date that the rule applies to.' })
  effectiveFrom: string;
}

export class LaborRuleListQuery extends ListQuery {
  @CostCodeField({ description: 'Only the rules of this cost code.', optional: true })
  costCode?: string;
}

@ApiSchema({ name: 'LaborRule', description: 'Hours = max(minimumHours, setupHours + hoursPerUnit × quantity), before the access factor of the survey.' })
export class LaborRuleView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The rule.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'The cost code whose hours the rule gives.' })
  costCode: string;

  @ApiProperty({ type: 'string', description: 'The name.' })
  name: string;

  @ApiProperty({ type: 'string', enum: [...RULE_QUANTITIES], description: 'The quantity that the hours depend on.' })
  quantity: RuleQuantity;

  @ApiProperty({ type: 'string', enum: [...UNITS], description: 'The unit of the quantity that `hoursPerUnit` is for.' })
  unit: Unit;

  @ApiProperty({ type: 'string', description: 'Hours before the first unit.' })
  setupHours: string;

  @ApiProperty({ type: 'string', description: 'Hours for each unit, in hours per `unit`.' })
  hoursPerUnit: string;

  @ApiProperty({ type: 'string', description: 'The fewest hours.' })
  minimumHours: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'The first survey date that the rule applies to.' })
  effectiveFrom: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the rule was made; of two with the same `effectiveFrom`, the one made last is in force.' })
  createdAt: string;
}
