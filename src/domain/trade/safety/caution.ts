import { plain } from '../../decimal.js';
import type { WorkingStep } from '../../working.js';

/**
 * Something to be careful about. There is no other kind of result here: a check that finds nothing to warn of permits
 * nothing, since the program sees neither the soil, the wiring nor the person.
 */
export interface Caution {
  readonly topic: string;
  readonly text: string;
  /** The rule or publication it leans on; rules differ by place and edition. */
  readonly source: string;
}

export interface Checked {
  readonly cautions: Caution[];
  readonly steps: WorkingStep[];
}

/** Ends every list of cautions, whatever was asked. */
export function deferral(who: string): Caution {
  return { topic: 'Local code', text: `These are cautions, not permission. Local code and ${who} decide; rules differ by place and change with each edition.`, source: 'general' };
}

/** A comparison that led to a caution or to none, for the working. */
export function compared(what: string, value: number, relation: string, limit: number, unit: string, hit: boolean): WorkingStep {
  return { label: what, expression: `${plain(value)} ${relation} ${plain(limit)} ${unit}`, value: hit ? 'caution' : 'no caution from this rule' };
}

/** A question that led to a caution or to none, for the working. */
export function asked(what: string, answer: boolean): WorkingStep {
  return { label: what, expression: answer ? 'yes' : 'no', value: answer ? 'caution' : 'no caution from this rule' };
}

/** A depth of 24 × 0.0254 m falls short of 0.6096 m by binary dust; a caution must not be lost to that. */
export function reaches(valueM: number, limitM: number): boolean {
  return valueM >= limitM - 1e-6;
}
