import type { PartKind } from '../catalog/index.js';

/** What can be proposed, in the order of the work. */
export const SCOPES = ['clean-out', 'haul-away', 'liner', 'edge', 'skimmer', 'circulation', 'filter', 'waterfall', 'doser', 'plants', 'fish'] as const;
export type Scope = (typeof SCOPES)[number];

interface ScopeWork {
  /** The cost code that its hours and parts go to; a company that calls it otherwise says so in the request. */
  readonly costCode: string;
  /** The kinds of parts that it takes from the catalog. */
  readonly kinds: readonly PartKind[];
  /** The material that can be used again instead of bought. */
  readonly reclaims: 'stone' | 'plants' | 'driftwood' | null;
}

export const WORK_OF: Readonly<Record<Scope, ScopeWork>> = {
  'clean-out': { costCode: 'cleanout', kinds: [], reclaims: null },
  'haul-away': { costCode: 'hauling', kinds: [], reclaims: null },
  liner: { costCode: 'liner', kinds: ['liner', 'underlayment'], reclaims: null },
  edge: { costCode: 'edge', kinds: ['stone'], reclaims: 'stone' },
  skimmer: { costCode: 'filtration', kinds: ['skimmer'], reclaims: null },
  circulation: { costCode: 'plumbing', kinds: ['pump', 'pipe', 'fitting'], reclaims: null },
  filter: { costCode: 'filtration', kinds: ['filter'], reclaims: null },
  waterfall: { costCode: 'waterfall', kinds: ['spillway'], reclaims: 'driftwood' },
  doser: { costCode: 'filtration', kinds: ['doser'], reclaims: null },
  plants: { costCode: 'planting', kinds: ['plant'], reclaims: 'plants' },
  fish: { costCode: 'fish', kinds: ['fish'], reclaims: null },
};
