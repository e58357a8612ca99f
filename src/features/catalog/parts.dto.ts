import { ApiExtraModels, ApiProperty, ApiSchema } from '@nestjs/swagger';
import { type Unit, UNITS } from '../../domain/quantity/index.js';
import { BooleanField, ChoiceField, DecimalField, MoneyBody, MoneyField, OwnIdField, TextField } from '../../platform/http/fields/index.js';
import { ListQuery } from '../../platform/http/lists.js';
import { ApiAttributes, ATTRIBUTES_CLASSES, AttributesField, PART_KINDS, type PartAttributes, type PartKind } from './attributes/index.js';

const SKU = { max: 60, pattern: { test: /^[A-Za-z0-9][A-Za-z0-9._-]*$/, says: 'must be letters A to Z, digits, points, underscores and hyphens, beginning with a letter or digit' } };
const ATTRIBUTES = 'What a design needs to know of the part, by its kind.';

@ApiExtraModels(...ATTRIBUTES_CLASSES)
@ApiSchema({ name: 'PartInput' })
export class PartBody {
  @OwnIdField()
  id?: string | null;

  @TextField({ ...SKU, description: 'The stock number, once in the catalog.', example: 'UL-8OZ-15' })
  sku: string;

  @TextField({ description: 'The name on documents.', max: 200, example: 'Underlayment, non-woven, 8 oz' })
  name: string;

  @ChoiceField({ description: 'The unit that the part is counted in.', of: UNITS, example: 'ft2' })
  unit: Unit;

  @MoneyField({ description: 'What one unit costs the company, in the company\'s currency. A change is kept in the cost history.', sign: 'not-negative' })
  unitCost: MoneyBody;

  @DecimalField({ description: 'Percent added to the cost: 35 sells a cost of 100 at 135.', min: '0', max: '10000', scale: 4, example: '35' })
  markupPercent: string;

  @DecimalField({ description: 'Units in the smallest pack; a quote rounds up to whole packs. 1 when missing.', min: '0', above: true, max: '1000000', scale: 4, optional: true, default: '1', example: '1' })
  packSize?: string | null;

  @TextField({ description: 'The code of the tax category, one of the company\'s; none when the part is not taxed.', max: 40, optional: true, example: 'materials' })
  taxCategory?: string | null;

  @BooleanField({ description: 'Whether new quotes may use it. True when missing.', optional: true, default: true })
  active?: boolean | null;

  @AttributesField(ATTRIBUTES)
  attributes?: PartAttributes | null;
}

export class PartListQuery extends ListQuery {
  @TextField({ ...SKU, description: 'Only the part with this stock number.', optional: true })
  sku?: string;

  @ChoiceField({ description: 'Only the parts whose attributes are of this kind.', of: PART_KINDS, optional: true })
  kind?: PartKind;
}

@ApiExtraModels(...ATTRIBUTES_CLASSES)
@ApiSchema({ name: 'Part', description: 'Something bought and sold on, at its cost of today.' })
export class PartView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The part.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'The stock number.' })
  sku: string;

  @ApiProperty({ type: 'string', description: 'The name on documents.' })
  name: string;

  @ApiProperty({ type: 'string', enum: [...UNITS], description: 'The unit that the part is counted in.' })
  unit: Unit;

  @ApiProperty({ type: MoneyBody, description: 'What one unit costs the company today.' })
  unitCost: MoneyBody;

  @ApiProperty({ type: 'string', description: 'Percent added to the cost.' })
  markupPercent: string;

  @ApiProperty({ type: 'string', description: 'Units in the smallest pack.' })
  packSize: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'The code of the tax category.' })
  taxCategory: string | null;

  @ApiProperty({ type: 'boolean', description: 'Whether new quotes may use it.' })
  active: boolean;

  @ApiAttributes(`${ATTRIBUTES} Null when none were entered.`, true)
  attributes: PartAttributes | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the part was entered.' })
  createdAt: string;
}

@ApiSchema({ name: 'PartCost', description: 'What a part cost from a moment on.' })
export class PartCostView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The entry.' })
  id: string;

  @ApiProperty({ type: MoneyBody, description: 'What one unit cost the company.' })
  unitCost: MoneyBody;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'From when on.' })
  recordedAt: string;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The person who entered it; null when the service itself did.' })
  recordedBy: string | null;
}
