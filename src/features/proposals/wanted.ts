import type { Takeoff } from '../../domain/trade/index.js';
import type { PartEntity } from '../catalog/index.js';
import type { SurveyEntity } from '../surveys/index.js';
import type { ProposalBody } from './proposals.dto.js';
import type { Scope } from './scopes.js';

/** Parts that the request names for the loop; null where it does not. */
export interface NamedParts {
  readonly skimmer: PartEntity | null;
  readonly filter: PartEntity | null;
}

/** What a proposal is made from. */
export interface Wanted {
  readonly body: ProposalBody;
  readonly survey: SurveyEntity;
  readonly takeoff: Takeoff;
  readonly currency: string;
  readonly scopes: readonly Scope[];
  /** Of the catalog, of all kinds that the scopes take. */
  readonly parts: readonly PartEntity[];
  readonly named: NamedParts;
}
