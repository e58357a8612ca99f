import { invalidInput } from '../../platform/http/problems.js';
import type { ScopeSectionBody } from './draft-section.dto.js';
import type { Scope } from './scopes.js';

/** What stands on the document over the lines of a scope. */
const TITLES: Readonly<Record<Scope, string>> = {
  'clean-out': 'Clean-out',
  'haul-away': 'Hauling away',
  liner: 'Liner',
  edge: 'Edge',
  skimmer: 'Skimmer',
  circulation: 'Circulation loop',
  filter: 'Filter',
  waterfall: 'Waterfall',
  doser: 'Doser',
  plants: 'Plants',
  fish: 'Fish',
};

export interface DraftSection {
  readonly key: Scope;
  readonly title: string;
  readonly phase: number;
  readonly optional: boolean;
}

/**
 * A section for each scope. A scope of which nothing is said is base work of phase 1: left out of the list by mistake,
 * it stands in the total, where it is seen.
 * @throws Problem 400 at /sections/i/scope for a scope that is not proposed, or is there twice
 */
export function draftSections(scopes: readonly Scope[], asked: readonly ScopeSectionBody[]): DraftSection[] {
  const wrong = asked.flatMap(({ scope }, index) => {
    const pointer = `/sections/${index}/scope`;
    if (!scopes.includes(scope)) return [{ pointer, detail: `is not in the scope of this proposal; add ${scope} to /scope, or leave its section out` }];
    const first = asked.findIndex((other) => other.scope === scope);
    return first < index ? [{ pointer, detail: `has a section already, at /sections/${first}` }] : [];
  });
  if (wrong.length > 0) throw invalidInput(wrong);
  return scopes.map((key) => {
    const own = asked.find(({ scope }) => scope === key);
    return { key, title: TITLES[key], phase: own?.phase ?? 1, optional: own?.optional ?? false };
  });
}
