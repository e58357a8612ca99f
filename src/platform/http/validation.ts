import { type ArgumentMetadata, Injectable, type PipeTransform } from '@nestjs/common';
import { plainToInstance } from 'class-transformer';
import { validate, type ValidationError } from 'class-validator';
import { requireBounded } from './body-bounds.js';
import type { Problem, Violation } from './problem.js';
import { invalidInput, pointerBelow } from './problems.js';

type Class<T extends object> = new () => T;

const MOST_VIOLATIONS = 50;

/**
 * Checks a value against its class and returns the instance.
 * @throws Problem 400 with a pointer and advice for each violation
 */
export async function validateAs<T extends object>(type: Class<T>, value: unknown): Promise<T> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw invalidInput([{ pointer: '', detail: 'the body must be a JSON object' }]);
  }
  const instance = plainToInstance(type, value, { exposeUnsetFields: false });
  const errors = await validate(instance, { whitelist: true, forbidNonWhitelisted: true, forbidUnknownValues: true, stopAtFirstError: true });
  if (errors.length > 0) throw toProblem(errors);
  return instance;
}

function toProblem(errors: readonly ValidationError[]): Problem {
  const violations: Violation[] = [];
  for (const error of errors) collect(error, '', violations);
  return invalidInput(violations.slice(0, MOST_VIOLATIONS));
}

function collect(error: ValidationError, prefix: string, into: Violation[]): void {
  if (into.length >= MOST_VIOLATIONS) return;
  const pointer = pointerBelow(prefix, error.property);
  for (const [rule, message] of Object.entries(error.constraints ?? {})) {
    // A constraint that looks inside a value marks the place by a pointer of its own: "/3/toBottom: must…".
    const inner = /^(\/\S*): (.*)$/s.exec(message);
    if (rule === 'whitelistValidation') into.push({ pointer, detail: 'is not a known field; remove it, or check its spelling' });
    else if (inner !== null) into.push({ pointer: pointer + inner[1], detail: inner[2] ?? '' });
    else into.push({ pointer, detail: message });
  }
  for (const child of error.children ?? []) collect(child, pointer, into);
}

/** Checks every body and query that has a class; anything else passes as it is. */
@Injectable()
export class ValidationPipe implements PipeTransform {
  async transform(value: unknown, { type, metatype }: ArgumentMetadata): Promise<unknown> {
    if (type === 'body' || type === 'query') requireBounded(value);
    if (metatype === undefined || (type !== 'body' && type !== 'query') || [Object, String, Number, Boolean, Array].includes(metatype as never)) return value;
    return validateAs(metatype as Class<object>, value ?? {});
  }
}
