import { type FieldOptions, TextField } from '../../platform/http/fields/index.js';

const SECTION_KEY = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

/** The name that items and an acceptance call a section by. */
export function SectionKeyField(options: FieldOptions): PropertyDecorator {
  return TextField({
    ...options,
    example: options.example ?? 'waterfall',
    max: 40,
    pattern: { test: SECTION_KEY, says: 'must be lower-case letters, digits and single hyphens, beginning with a letter, such as waterfall or phase-two' },
  });
}
