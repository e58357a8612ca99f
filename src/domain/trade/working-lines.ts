import { plain } from '../decimal.js';
import type { WorkingStep, WorkingValue } from '../working.js';

/** A figure that went in, in full digits. */
export function given(name: string, value: number, unit?: string, source?: string): WorkingValue {
  return { name, value: plain(value), ...(unit === undefined ? {} : { unit }), ...(source === undefined ? {} : { source }) };
}

/** One line of arithmetic, its result in full digits. */
export function step(label: string, expression: string, value: number, unit?: string): WorkingStep {
  return { label, expression, value: plain(value), ...(unit === undefined ? {} : { unit }) };
}
