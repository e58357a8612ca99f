import { isUuid } from '../../../platform/http/fields/index.js';
import type { MutationBody } from './push.dto.js';

/**
 * The row that a mutation is about: its kind begins with the row's, and the body of a change names the row in `id`.
 * @returns null when the body names none
 */
export function subjectOf({ kind, body }: Pick<MutationBody, 'kind' | 'body'>): { entity: string; entityId: string } | null {
  const entity = kind.split('.')[0] ?? '';
  const id = (body as { id?: unknown }).id;
  return isUuid(id) ? { entity, entityId: id.toLowerCase() } : null;
}
