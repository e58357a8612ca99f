import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import type { Working, WorkingStep } from '../../working.js';
import { requirePositive } from '../input-checks.js';
import { given, step } from '../working-lines.js';

export const FLOW_FITS = ['fits', 'too-little', 'too-much', 'unknown'] as const;
export type FlowFit = (typeof FLOW_FITS)[number];

/** A skimmer or filter with the flow limits of its maker; null where none is stated. */
export interface FlowLimited {
  readonly name: string;
  /** How many of it share the flow alike, 1 or more. */
  readonly count: number;
  readonly leastM3PerS: number | null;
  readonly mostM3PerS: number | null;
}

export interface FlowCheck {
  /** Hours in which the pump moves the pond's water once. */
  readonly turnoverHours: number;
  readonly items: readonly { readonly name: string; readonly flowM3PerS: number; readonly fit: FlowFit }[];
  readonly working: Working;
  readonly warnings: string[];
}

/** Turnover once in 1 to 2 hours is common practice. */
const USUAL_TURNOVER_HOURS = { least: 1, most: 2 };

/**
 * Whether the flow of a loop lies within what each skimmer and filter on it may take.
 * @param flowM3PerS of the loop at its operating point, above 0
 * @param volumeM3 of the water, above 0
 * @throws DomainError at /flow, /volume, /items/i/count or /items/i/mostFlow
 */
export function checkFlowLimits(flowM3PerS: number, volumeM3: number, items: readonly FlowLimited[]): FlowCheck {
  requirePositive('/flow', flowM3PerS);
  requirePositive('/volume', volumeM3);
  items.forEach((item, i) => {
    if (!(Number.isInteger(item.count) && item.count >= 1)) throw DomainError.at(`/items/${i}/count`, 'This must be a whole number from 1.');
    if (item.leastM3PerS !== null && item.mostM3PerS !== null && item.mostM3PerS < item.leastM3PerS) {
      throw DomainError.at(`/items/${i}/mostFlow`, 'This must not be less than the least flow.');
    }
  });
  const turnoverHours = volumeM3 / flowM3PerS / 3600;
  const steps: WorkingStep[] = [step('turnover', `${plain(volumeM3)} / ${plain(flowM3PerS)} / 3600`, turnoverHours, 'h')];
  const warnings: string[] = [];
  const checked = items.map((item) => {
    const each = flowM3PerS / item.count;
    const fit = fitOf(each, item);
    steps.push(step(`${item.name}: flow through each`, `${plain(flowM3PerS)} / ${item.count}`, each, 'm3/s'));
    if (fit !== 'fits') warnings.push(`${item.name}: ${SAYS[fit]}`);
    return { name: item.name, flowM3PerS: each, fit };
  });
  if (turnoverHours > USUAL_TURNOVER_HOURS.most) warnings.push('The water turns over less than once in 2 hours; once in 1 to 2 hours is common practice.');
  if (turnoverHours < USUAL_TURNOVER_HOURS.least) warnings.push('The water turns over more than once an hour; once in 1 to 2 hours is common practice, and still-water plants mind more.');
  const working: Working = {
    rule: 'turnover = volume / flow; each of several alike takes its share of the flow',
    inputs: [given('flow', flowM3PerS, 'm3/s'), given('water', volumeM3, 'm3')],
    steps,
  };
  return { turnoverHours, items: checked, working, warnings };
}

function fitOf(each: number, { leastM3PerS, mostM3PerS }: FlowLimited): FlowFit {
  if (leastM3PerS !== null && each < leastM3PerS) return 'too-little';
  if (mostM3PerS !== null && each > mostM3PerS) return 'too-much';
  return leastM3PerS === null && mostM3PerS === null ? 'unknown' : 'fits';
}

const SAYS: Record<Exclude<FlowFit, 'fits'>, string> = {
  'too-little': 'less flow than its least; a skimmer stops drawing, a filter starves.',
  'too-much': 'more flow than its most; share the flow, throttle it, or take a larger one.',
  unknown: 'no limits are stated; ask the maker.',
};
