import { applyDecorators } from '@nestjs/common';
import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { IsOptional, ValidateBy } from 'class-validator';
import { fromSi, isUnit, kindOf, type Quantity, toSi, UNITS, type QuantityKind, type Unit, unitsOf } from '../../../domain/quantity/index.js';
import { type FieldOptions } from './field.js';

/** A measured or computed quantity on the wire. */
@ApiSchema({ name: 'Quantity', description: 'A number with its unit.' })
export class QuantityBody {
  @ApiProperty({ type: 'number', description: 'The number, in the unit named beside it.', example: 96 })
  value: number;

  @ApiProperty({ type: 'string', enum: [...UNITS], description: 'The unit.', example: 'ft' })
  unit: string;
}

interface QuantityOptions extends Omit<FieldOptions, 'example'> {
  readonly example?: Quantity;
  readonly kind: QuantityKind;
  /** Bounds in the SI unit of the kind (m, m2, m3, m3/s, kg, h, each). */
  readonly minSi: number;
  readonly maxSi: number;
}

/** What is wrong with a quantity, with an inner pointer, or null. */
export function checkQuantity(value: unknown, kind: QuantityKind, minSi: number, maxSi: number): string | null {
  const units = unitsOf(kind).join(', ');
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return `must be a quantity such as {"value": 96, "unit": "${unitsOf(kind)[0]}"}; the units allowed are ${units}`;
  const { value: number, unit, ...rest } = value as Record<string, unknown>;
  const extra = Object.keys(rest)[0];
  if (extra !== undefined) return `/${extra}: is not a known field of a quantity; remove it`;
  if (unit === undefined || unit === null) return `/unit: is missing; the units allowed here are ${units}`;
  if (typeof unit !== 'string' || !isUnit(unit) || kindOf(unit) !== kind) return `/unit: must be a unit of ${kind}; the units allowed here are ${units}`;
  if (typeof number !== 'number' || !Number.isFinite(number)) return '/value: must be a finite number';
  const si = toSi({ value: number, unit });
  if (si < minSi || si > maxSi) return `/value: is out of range; a ${kind} here lies between ${inWords(minSi, unit)} and ${inWords(maxSi, unit)} ${unit}`;
  return null;
}

/** A bound in the unit that was sent, so that the two can be compared; no more digits than anybody reads. */
function inWords(si: number, unit: Unit): number {
  return Number(fromSi(si, unit).toPrecision(6));
}

/** What the reference shows of a field without an example of its own, the first that the field takes: that of the type is a length, which other fields refuse. */
const USUAL: Record<QuantityKind, readonly Quantity[]> = {
  length: [{ value: 2, unit: 'ft' }, { value: 3, unit: 'in' }, { value: 0.1, unit: 'in' }],
  area: [{ value: 300, unit: 'ft2' }],
  volume: [{ value: 1000, unit: 'gal' }, { value: 0.1, unit: 'gal' }],
  flow: [{ value: 40, unit: 'gpm' }],
  mass: [{ value: 12, unit: 'lb' }, { value: 7, unit: 'ton' }],
  time: [{ value: 2, unit: 'h' }],
  count: [{ value: 2, unit: 'each' }],
};

function exampleOf({ example, kind, minSi, maxSi }: QuantityOptions): { readonly example?: Quantity } {
  const shown = example ?? USUAL[kind].find((usual) => checkQuantity(usual, kind, minSi, maxSi) === null);
  return shown === undefined ? {} : { example: shown };
}

export function QuantityField(options: QuantityOptions): PropertyDecorator {
  const run = (value: unknown): string | null => checkQuantity(value, options.kind, options.minSi, options.maxSi);
  return applyDecorators(
    ApiProperty({
      type: QuantityBody,
      description: `${options.description} Units: ${unitsOf(options.kind).join(', ')}.`,
      required: options.optional !== true,
      ...(options.optional === true ? { nullable: true } : {}),
      ...exampleOf(options),
    }),
    ValidateBy({ name: 'quantity', validator: { validate: (value: unknown) => run(value) === null, defaultMessage: (args) => run(args?.value) ?? '' } }),
    ...(options.optional === true ? [IsOptional()] : []),
  );
}
