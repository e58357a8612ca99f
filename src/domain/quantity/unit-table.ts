import { ratioOf, type Ratio } from './exact-ratio.js';

export type QuantityKind = 'length' | 'area' | 'volume' | 'flow' | 'mass' | 'time' | 'count';

interface UnitRow {
  readonly kind: QuantityKind;
  /** SI value of one unit. A fraction, since 1 gph in m3/s has no finite decimal. */
  readonly si: Ratio;
  /** Units in one of SI. */
  readonly perSi: Ratio;
}

const row = (kind: QuantityKind, times: string, by = '1'): UnitRow => ({ kind, si: ratioOf(times, by), perSi: ratioOf(by, times) });

/**
 * Every unit the service speaks, with its exact factor to m, m2, m3, m3/s, kg, h or each.
 * The international foot (0.3048 m), the US gallon (231 in3), the avoirdupois pound (0.453 592 37 kg);
 * `ton` is the US short ton of 2,000 lb, `t` the tonne.
 * @see NIST Handbook 44, Appendix C
 */
const TABLE = {
  in: row('length', '0.0254'),
  ft: row('length', '0.3048'),
  yd: row('length', '0.9144'),
  mm: row('length', '0.001'),
  cm: row('length', '0.01'),
  m: row('length', '1'),
  ft2: row('area', '0.09290304'),
  yd2: row('area', '0.83612736'),
  m2: row('area', '1'),
  ft3: row('volume', '0.028316846592'),
  yd3: row('volume', '0.764554857984'),
  m3: row('volume', '1'),
  gal: row('volume', '0.003785411784'),
  L: row('volume', '0.001'),
  gpm: row('flow', '0.003785411784', '60'),
  gph: row('flow', '0.003785411784', '3600'),
  'L/min': row('flow', '0.001', '60'),
  'm3/h': row('flow', '1', '3600'),
  lb: row('mass', '0.45359237'),
  ton: row('mass', '907.18474'),
  kg: row('mass', '1'),
  t: row('mass', '1000'),
  h: row('time', '1'),
  each: row('count', '1'),
} as const;

export type Unit = keyof typeof TABLE;

export const UNITS: readonly Unit[] = Object.keys(TABLE) as Unit[];

/** Whether `text` names a unit; own keys only, so that "constructor" is none. */
export function isUnit(text: unknown): text is Unit {
  return typeof text === 'string' && Object.hasOwn(TABLE, text);
}

export function unitRow(unit: Unit): UnitRow {
  return TABLE[unit];
}
