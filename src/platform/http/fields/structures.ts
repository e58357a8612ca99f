import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { Type } from 'class-transformer';
import { ArrayMaxSize, ArrayMinSize, IsArray, IsObject, IsOptional, ValidateBy, ValidateNested } from 'class-validator';
import { Field, type FieldOptions } from './field.js';
import { isBlank, isCleanText } from './text.js';

type Class = new () => object;

/** A list of objects of one class. */
export function ListField(type: () => Class, options: FieldOptions & { readonly most: number; readonly fewest?: number }): PropertyDecorator {
  return applyDecorators(
    ApiProperty({ type: () => [type()], description: options.description, required: options.optional !== true, maxItems: options.most, ...(options.fewest === undefined ? {} : { minItems: options.fewest }) }),
    Type(type),
    ValidateNested({ each: true, message: 'every item must be an object' }),
    NoListWithin(),
    ArrayMaxSize(options.most, { message: `must have at most ${options.most} items` }),
    ...(options.fewest === undefined ? [] : [ArrayMinSize(options.fewest, { message: `must have at least ${options.fewest} items` })]),
    IsArray({ message: 'must be a list' }),
    ...(options.optional === true ? [IsOptional()] : []),
  );
}

/** The check of nested items goes into a list within the list and takes it, even an empty one, for an item. */
function NoListWithin(): PropertyDecorator {
  const inner = (value: unknown): number => (Array.isArray(value) ? value.findIndex((item) => Array.isArray(item)) : -1);
  return ValidateBy({ name: 'noListWithin', validator: { validate: (value: unknown) => inner(value) < 0, defaultMessage: (args) => `/${inner(args?.value)}: must be an object` } });
}

/** An object of one class inside another. */
export function NestedField(type: () => Class, options: FieldOptions): PropertyDecorator {
  return applyDecorators(
    ApiProperty({ type: () => type(), description: options.description, required: options.optional !== true, ...(options.optional === true ? { nullable: true } : {}) }),
    Type(type),
    ValidateNested({ message: 'must be an object' }),
    IsObject({ message: 'must be an object' }),
    ...(options.optional === true ? [IsOptional()] : []),
  );
}

/** A list of short texts. */
export function TextListField(options: FieldOptions & { readonly most: number; readonly maxLength: number }): PropertyDecorator {
  const { most, maxLength } = options;
  return Field(options, { type: 'array', items: { type: 'string', minLength: 1, maxLength }, maxItems: most }, (value) => {
    if (!Array.isArray(value)) return 'must be a list of texts';
    if (value.length > most) return `must have at most ${most} items; it has ${value.length}`;
    const bad = value.findIndex((item) => typeof item !== 'string' || isBlank(item) || [...item].length > maxLength || !isCleanText(item));
    return bad < 0 ? null : `/${bad}: must be text of 1 to ${maxLength} characters, without control characters`;
  });
}

/** Free settings of a thing: names to words, numbers or switches. */
export function SettingsField(options: FieldOptions): PropertyDecorator {
  return Field(options, { type: 'object', additionalProperties: { type: ['string', 'number', 'boolean'] }, maxProperties: 50 }, (value) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return 'must be an object of names and values';
    const entries = Object.entries(value);
    if (entries.length > 50) return 'must have at most 50 settings';
    for (const [name, setting] of entries) {
      if (!/^[A-Za-z][A-Za-z0-9 _-]{0,39}$/.test(name)) return 'must have names of 1 to 40 letters, digits, spaces, hyphens and underscores, beginning with a letter';
      const fine = typeof setting === 'boolean' || (typeof setting === 'number' && Number.isFinite(setting)) || (typeof setting === 'string' && setting.length <= 200 && isCleanText(setting));
      if (!fine) return `/${name}: must be a text of at most 200 characters without control characters, a number, or true or false`;
    }
    return null;
  });
}
