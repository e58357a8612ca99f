import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ValidateBy } from 'class-validator';
import { applyDecorators } from '@nestjs/common';
import { isUnit, kindOf, type Quantity, type QuantityKind, unitsOf } from '../../../domain/quantity/index.js';
import { checkQuantity, ChoiceField, QuantityBody, TextField } from '../../../platform/http/fields/index.js';

export const RECLAIMED_KINDS = ['stone', 'plants', 'driftwood'] as const;

/** Stone is weighed, heaped or counted; in kg, m3 or pieces up to more than a site holds. */
const MEASURES: readonly { kind: QuantityKind; most: number }[] = [
  { kind: 'mass', most: 1e6 },
  { kind: 'volume', most: 1000 },
  { kind: 'count', most: 100_000 },
];
const UNITS = MEASURES.flatMap(({ kind }) => unitsOf(kind));

function check(value: unknown): string | null {
  const unit = (value as { unit?: unknown } | null)?.unit;
  const measure = isUnit(unit) ? MEASURES.find(({ kind }) => kind === kindOf(unit)) : undefined;
  if (measure !== undefined) return checkQuantity(value, measure.kind, 0, measure.most);
  const form = checkQuantity(value, 'count', 0, 0);
  return form?.startsWith('/unit') === true ? `/unit: must be one of ${UNITS.join(', ')}` : form;
}

/** A quantity by weight, by volume or by the piece. */
function WeighedOrCountedField(description: string): PropertyDecorator {
  return applyDecorators(
    ApiProperty({ type: QuantityBody, description: `${description} Units: ${UNITS.join(', ')}.`, example: { value: 2.5, unit: 'ton' } }),
    ValidateBy({ name: 'weighedOrCounted', validator: { validate: (value: unknown) => check(value) === null, defaultMessage: (args) => check(args?.value) ?? '' } }),
  );
}

@ApiSchema({ name: 'ReclaimedMaterial' })
export class ReclaimedMaterialBody {
  @ChoiceField({ description: 'What can be used again: stone, plants to divide and repot, driftwood.', of: RECLAIMED_KINDS })
  kind: (typeof RECLAIMED_KINDS)[number];

  @WeighedOrCountedField('How much of it there is.')
  quantity: Quantity;

  @TextField({ description: 'What to know about it.', max: 500, multiline: true, optional: true, example: 'Behind the shed, moss side up' })
  note?: string | null;
}
