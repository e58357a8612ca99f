import { invalidInput, noSuchReference } from '../../platform/http/problems.js';
import type { PartEntity } from '../catalog/index.js';
import type { ProposalBody } from './proposals.dto.js';
import type { NamedParts } from './wanted.js';

type Asked = Pick<ProposalBody, 'skimmerPartId' | 'filterPartId'>;

/** The ids that a request names, as the catalog is asked for them. */
export function namedIds({ skimmerPartId, filterPartId }: Asked): string[] {
  return [skimmerPartId, filterPartId].flatMap((id) => (id ? [id.toLowerCase()] : []));
}

/** @throws Problem at /skimmerPartId or /filterPartId for a part that is not there, or is something else */
export function namedParts({ skimmerPartId, filterPartId }: Asked, found: ReadonlyMap<string, PartEntity>): NamedParts {
  const named = (id: string | null | undefined, kind: 'skimmer' | 'filter'): PartEntity | null => {
    if (!id) return null;
    const part = found.get(id.toLowerCase());
    if (part === undefined) throw noSuchReference(`/${kind}PartId`, 'part');
    if (part.kind !== kind) throw invalidInput([{ pointer: `/${kind}PartId`, detail: `must be a part whose attributes are of the kind ${kind}` }]);
    return part;
  };
  return { skimmer: named(skimmerPartId, 'skimmer'), filter: named(filterPartId, 'filter') };
}
