import { Transform } from 'class-transformer';
import { applyDecorators } from '@nestjs/common';
import { Decimal } from '../../../domain/decimal.js';
import { Field, type FieldOptions } from './field.js';

interface DecimalOptions extends FieldOptions {
  readonly min: string;
  readonly max: string;
  /** The most digits after the point. */
  readonly scale: number;
  /** Whether `min` itself is excluded. */
  readonly above?: boolean;
}

/** Checks a decimal string against its bounds; returns what is wrong, or null. */
export function checkDecimal(value: unknown, { min, max, scale, above }: Omit<DecimalOptions, 'description'>): string | null {
  if (typeof value !== 'string') return 'must be a decimal number written as a string, such as "1.75"';
  if (!/^-?\d{1,15}(\.\d{1,12})?$/.test(value)) return 'must be plain decimal digits with a point, such as "1.75"; no exponent, no separators';
  if ((value.split('.')[1]?.length ?? 0) > scale) return `must have at most ${scale} digits after the point`;
  const number = new Decimal(value);
  if (above === true ? number.lte(min) : number.lt(min)) return above === true ? `must be more than ${min}` : `must be at least ${min}`;
  return number.gt(max) ? `must be at most ${max}` : null;
}

/** A rate, an hour or a factor that enters a price: a decimal string, so that no digit is lost on the way. */
export function DecimalField(options: DecimalOptions): PropertyDecorator {
  const range = `${options.above === true ? 'More than' : 'At least'} ${options.min}, at most ${options.max}, up to ${options.scale} decimals.`;
  return applyDecorators(
    Field({ ...options, description: `${options.description} ${range}` }, { type: 'string', pattern: '^-?\\d{1,15}(\\.\\d{1,12})?$' }, (value) => checkDecimal(value, options)),
  );
}

export function IntegerField(options: FieldOptions & { readonly min: number; readonly max: number }): PropertyDecorator {
  return Field(options, { type: 'integer', minimum: options.min, maximum: options.max }, (value) =>
    Number.isInteger(value) && (value as number) >= options.min && (value as number) <= options.max ? null : `must be a whole number from ${options.min} to ${options.max}`,
  );
}

/** A whole number in a query string. */
export function QueryInteger(): PropertyDecorator {
  return Transform(({ value }: { value: unknown }) => (typeof value === 'string' && /^\d{1,9}$/.test(value) ? Number(value) : value));
}

/** A measured or assumed number that no price is made of; its unit stands in its name and description. */
export function NumberField(options: FieldOptions & { readonly min: number; readonly max: number }): PropertyDecorator {
  const { min, max } = options;
  return Field({ ...options, description: `${options.description} From ${min} to ${max}.` }, { type: 'number', minimum: min, maximum: max }, (value) =>
    typeof value === 'number' && Number.isFinite(value) && value >= min && value <= max ? null : `must be a number from ${min} to ${max}`,
  );
}
