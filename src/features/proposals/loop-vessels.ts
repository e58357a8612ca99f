import { Decimal } from '../../domain/decimal.js';
import { toSi } from '../../domain/quantity/index.js';
import { shownFlow } from '../../domain/trade/hydraulics/index.js';
import type { Choice, Line } from './choice.js';
import { chooseByFlow, flowLimits, MOST_SHARING, sharing } from './parts/flow-parts.js';
import type { Wanted } from './wanted.js';

export const NO_VOLUME = 'The flow goes by the water volume, which needs rod readings in the survey.';

/** What is to be measured first. */
export interface Missing {
  readonly missing: string;
}

export interface Vessels {
  readonly skimmer: Choice | Missing;
  readonly filter: Choice | Missing;
  /** The skimmers and filters that the pump works against. */
  readonly taken: readonly Line[];
}

/** @param flowM3PerS that skimmer and filter are to take @param from what gives it */
export function vesselsAt(wanted: Wanted, flowM3PerS: number | null, from: string): Vessels {
  const byFlow = (kind: 'skimmer' | 'filter'): Choice | Missing => (flowM3PerS === null ? { missing: NO_VOLUME } : chooseByFlow(wanted.parts.filter((part) => part.kind === kind), flowM3PerS, from));
  const [skimmer, filter] = [byFlow('skimmer'), byFlow('filter')];
  const taken = [lineInLoop('skimmer', skimmer, wanted, flowM3PerS), lineInLoop('filter', filter, wanted, flowM3PerS)].filter((line) => line !== null);
  return { skimmer, filter, taken };
}

/** The named part, or else the suggested one when it is to be built; as many as share the flow, spare ones of a pack left out. */
function lineInLoop(kind: 'skimmer' | 'filter', choice: Choice | Missing, { named, scopes }: Wanted, flowM3PerS: number | null): Line | null {
  const suggested = scopes.includes(kind) && !('missing' in choice) ? choice.fitting[0]?.part : undefined;
  const part = named[kind] ?? suggested;
  if (part === undefined) return null;
  const count = flowM3PerS === null ? 1 : sharing(part, flowM3PerS);
  return { part, quantity: new Decimal(count > MOST_SHARING ? 1 : count) };
}

/** Where the pump gives a skimmer or filter more than it takes. */
export function tooMuchFor(taken: readonly Line[], pumpFlow: number): string[] {
  return taken.flatMap(({ part, quantity }) => {
    const { most } = flowLimits(part);
    const each = pumpFlow / quantity.toNumber();
    return most !== null && each > most * (1 + 1e-9) ? [`With the suggested pump each ${part.name} gets ${shownFlow(each)}, and takes up to ${shownFlow(most)}: throttle the pump, or take another.`] : [];
  });
}

/** Of a filter's media, m2; null when it is unknown. */
export function mediaArea({ part, quantity }: Line): number | null {
  const { attributes } = part;
  return attributes?.kind === 'filter' && attributes.surfaceArea ? toSi(attributes.surfaceArea) * quantity.toNumber() : null;
}

export function sameLines(some: readonly Line[], others: readonly Line[]): boolean {
  return some.length === others.length && some.every(({ part, quantity }, i) => part === others[i]?.part && quantity.eq(others[i].quantity));
}
