import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { IsOptional, ValidateBy } from 'class-validator';

/** What every field says of itself in the API reference. */
export interface FieldOptions {
  readonly description: string;
  /** An optional field may be missing or null; both mean "none". */
  readonly optional?: boolean;
  readonly example?: unknown;
  /** The value that a missing field takes, for the reference. */
  readonly default?: unknown;
}

/**
 * A field with one rule: documentation and check in one decorator, so that they can't drift apart.
 * @param check returns null for a good value, or what is wrong and what to do
 */
export function Field(options: FieldOptions, schema: Record<string, unknown>, check: (value: unknown) => string | null): PropertyDecorator {
  return applyDecorators(
    DocumentedField(options, schema),
    ValidateBy({
      name: 'field',
      validator: {
        validate: (value: unknown) => check(value) === null,
        defaultMessage: (args) => check(args?.value) ?? '',
      },
    }),
    ...(options.optional === true ? [IsOptional()] : []),
  );
}

/** Only the documentation of a field: for views, and for fields whose check is elsewhere. */
export function DocumentedField(options: FieldOptions, schema: Record<string, unknown>): PropertyDecorator {
  const { description, optional, example } = options;
  return ApiProperty({
    description,
    required: optional !== true,
    ...(optional === true ? { nullable: true } : {}),
    ...(example === undefined ? {} : { example }),
    ...(options.default === undefined ? {} : { default: options.default }),
    ...schema,
  });
}
