import { Field, type FieldOptions } from './field.js';

interface TextOptions extends FieldOptions {
  /** The fewest characters, counted as code points; 1 unless told. */
  readonly min?: number;
  readonly max: number;
  /** Whether line breaks and tabs may stand in it. */
  readonly multiline?: boolean;
  readonly pattern?: { readonly test: RegExp; readonly says: string };
}

// C0 and C1 controls, separators of lines and paragraphs, and the controls that turn the direction of text: they would
// corrupt documents and logs.
const CONTROLS = /[\p{Cc}\p{Zl}\p{Zp}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/u;
const LINE_BREAKS = /[\t\n\r]/g;

/** Whether text has no control characters, line breaks and tabs aside, and no half of a surrogate pair, which can not be stored. */
export function isCleanText(value: string): boolean {
  return value.isWellFormed() && !CONTROLS.test(value.replace(LINE_BREAKS, ''));
}

/** Whether nothing of the text can be seen: spaces, and characters without a width. */
export function isBlank(value: string): boolean {
  return !/[^\s\p{Cf}]/u.test(value);
}

/** Free text in any script, without control characters. */
export function TextField(options: TextOptions): PropertyDecorator {
  const min = options.min ?? 1;
  const { max, pattern } = options;
  return Field(options, { type: 'string', minLength: min, maxLength: max, ...(pattern ? { pattern: pattern.test.source } : {}) }, (value) => {
    if (typeof value !== 'string') return 'must be text';
    const length = [...value].length;
    if (length < min || length > max) return `must have ${min} to ${max} characters; it has ${length}`;
    if (min > 0 && isBlank(value)) return 'must not be blank';
    if (CONTROLS.test(value.replace(LINE_BREAKS, ''))) return 'must not hold control characters; remove them';
    if (!value.isWellFormed()) return 'must be well-formed Unicode text; it holds half of a surrogate pair';
    if (options.multiline !== true && value.search(LINE_BREAKS) >= 0) return 'must be one line; remove line breaks and tabs';
    if (pattern && !pattern.test.test(value)) return pattern.says;
    return null;
  });
}

/** One of a fixed set of words. */
export function ChoiceField(options: FieldOptions & { readonly of: readonly string[] }): PropertyDecorator {
  return Field(options, { type: 'string', enum: [...options.of] }, (value) =>
    typeof value === 'string' && options.of.includes(value) ? null : `must be one of ${options.of.join(', ')}`,
  );
}

export function EmailField(options: FieldOptions): PropertyDecorator {
  return Field(options, { type: 'string', format: 'email', maxLength: 254 }, (value) =>
    typeof value === 'string' && value.length <= 254 && isCleanText(value) && /^[^\s@<>"]+@[^\s@<>"]+\.[^\s@<>"]+$/.test(value) ? null : 'must be an e-mail address such as name@example.com',
  );
}

/** The bucket that hours and costs are charged to. The words are the company's own. */
export function CostCodeField(options: FieldOptions): PropertyDecorator {
  return TextField({
    ...options,
    example: options.example ?? 'cleanout',
    max: 40,
    pattern: { test: /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, says: 'must be lower-case letters, digits and single hyphens, beginning with a letter, such as cleanout or start-up' },
  });
}

export function BooleanField(options: FieldOptions): PropertyDecorator {
  return Field(options, { type: 'boolean' }, (value) => (typeof value === 'boolean' ? null : 'must be true or false'));
}
