import { plain } from '../../domain/decimal.js';
import { convert, type Unit } from '../../domain/quantity/index.js';
import type { Working } from '../../domain/working.js';
import type { TakeoffFigure } from './takeoff-figure.js';

/** An SI figure in the unit that the reader is used to; its working ends with the conversion. */
export function shown(si: number, siUnit: Unit, unit: Unit, working: Working): TakeoffFigure {
  const value = convert(si, siUnit, unit);
  if (unit === siUnit) return { value, unit, working };
  return { value, unit, working: { ...working, steps: [...working.steps, { label: `in ${unit}`, expression: `${plain(si)} ${siUnit}`, value: plain(value), unit }] } };
}

/** The same working, with where the named inputs come from that the survey does not say. */
export function withSource(working: Working, source: string, names: readonly string[]): Working {
  return { ...working, inputs: working.inputs.map((input) => (names.includes(input.name) ? { ...input, source } : input)) };
}
