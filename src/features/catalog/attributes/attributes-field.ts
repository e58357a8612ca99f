import { applyDecorators } from '@nestjs/common';
import { ApiProperty, getSchemaPath } from '@nestjs/swagger';
import { Type } from 'class-transformer';
import { IsObject, IsOptional, ValidateNested } from 'class-validator';
import { UnknownAttributes } from './attributes.dto.js';
import { ATTRIBUTES_OF } from './part-attributes.js';

const BY_KIND = Object.entries(ATTRIBUTES_OF);

export const ATTRIBUTES_CLASSES = Object.values(ATTRIBUTES_OF);

/** Documentation of the attributes alone, for views. A class that uses it needs `ApiExtraModels(...ATTRIBUTES_CLASSES)`. */
export function ApiAttributes(description: string, required: boolean): PropertyDecorator {
  return ApiProperty({
    description,
    required,
    nullable: true,
    oneOf: ATTRIBUTES_CLASSES.map((type) => ({ $ref: getSchemaPath(type) })),
    discriminator: { propertyName: 'kind', mapping: Object.fromEntries(BY_KIND.map(([kind, type]) => [kind, getSchemaPath(type)])) },
  });
}

/** The library's own choice by a discriminator reads the kind of whatever is there, a list of nothing too. */
function classOf(value: unknown): new () => object {
  const kind = typeof value === 'object' && value !== null ? (value as { kind?: unknown }).kind : undefined;
  return BY_KIND.find(([name]) => name === kind)?.[1] ?? UnknownAttributes;
}

/** Attributes in a request: `kind` decides which class checks the rest. */
export function AttributesField(description: string): PropertyDecorator {
  return applyDecorators(
    ApiAttributes(description, false),
    Type((context) => classOf((context?.object as Record<string, unknown> | undefined)?.[context?.property ?? ''])),
    ValidateNested({ message: 'must be an object' }),
    IsObject({ message: 'must be an object' }),
    IsOptional(),
  );
}
