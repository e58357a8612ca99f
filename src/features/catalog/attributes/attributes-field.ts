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

/** Attributes in a request: `kind` decides which class checks the rest. */
export function AttributesField(description: string): PropertyDecorator {
  return applyDecorators(
    ApiAttributes(description, false),
    Type(() => UnknownAttributes, { discriminator: { property: 'kind', subTypes: BY_KIND.map(([name, value]) => ({ name, value })) }, keepDiscriminatorProperty: true }),
    ValidateNested({ message: 'must be an object' }),
    IsObject({ message: 'must be an object' }),
    IsOptional(),
  );
}
