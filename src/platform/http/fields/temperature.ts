import { applyDecorators } from '@nestjs/common';
import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { IsOptional, ValidateBy } from 'class-validator';
import type { FieldOptions } from './field.js';

@ApiSchema({ name: 'Temperature', description: 'A temperature with its scale.' })
export class TemperatureBody {
  @ApiProperty({ type: 'number', description: 'The number, in degrees of the scale named beside it.', example: 68 })
  value: number;

  @ApiProperty({ type: 'string', enum: ['degF', 'degC'], description: 'The scale: degrees Fahrenheit or Celsius.', example: 'degF' })
  unit: 'degF' | 'degC';
}

/** Degrees Celsius of a temperature; exact by definition: °C = (°F − 32) / 1.8. */
export function celsiusOf({ value, unit }: TemperatureBody): number {
  return unit === 'degC' ? value : (value - 32) / 1.8;
}

function check(value: unknown, minC: number, maxC: number): string | null {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return 'must be a temperature such as {"value": 68, "unit": "degF"}';
  const { value: number, unit, ...rest } = value as Record<string, unknown>;
  const extra = Object.keys(rest)[0];
  if (extra !== undefined) return `/${extra}: is not a known field of a temperature; remove it`;
  if (unit !== 'degF' && unit !== 'degC') return '/unit: must be degF or degC';
  if (typeof number !== 'number' || !Number.isFinite(number)) return '/value: must be a finite number';
  const celsius = celsiusOf({ value: number, unit });
  return celsius < minC || celsius > maxC ? `/value: must lie between ${minC} and ${maxC} degC` : null;
}

/** A temperature in a request, bounded in degrees Celsius. */
export function TemperatureField(options: FieldOptions & { readonly minC: number; readonly maxC: number }): PropertyDecorator {
  const run = (value: unknown): string | null => check(value, options.minC, options.maxC);
  return applyDecorators(
    ApiProperty({ type: TemperatureBody, description: `${options.description} From ${options.minC} to ${options.maxC} degC.`, required: options.optional !== true, ...(options.optional === true ? { nullable: true } : {}) }),
    ValidateBy({ name: 'temperature', validator: { validate: (value: unknown) => run(value) === null, defaultMessage: (args) => run(args?.value) ?? '' } }),
    ...(options.optional === true ? [IsOptional()] : []),
  );
}
