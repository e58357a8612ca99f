import type { BlockerEntity, BlockerKind } from './blocker.entity.js';

const NAMES: Readonly<Record<BlockerKind, string>> = { 'utility-locate': 'The utility locate', permit: 'The permit', materials: 'The delivery of materials', other: 'What must come before' };

/**
 * The usual caution; how long to wait, how near to the marks a machine may go and for how long they hold is a matter of
 * local law, which differs from place to place.
 */
export const LOCATE_CAUTION = 'Call before you dig. Local law says how long to wait, how near to the marks machines may work and for how long the marks hold; private lines, such as those of pumps and lights, are often not marked.';

/**
 * Why work on a day is held up, or null when it is not.
 * @param day YYYY-MM-DD at the site
 */
export function blockedBecause({ kind, clearOn, clearedOn, validUntil }: Pick<BlockerEntity, 'kind' | 'clearOn' | 'clearedOn' | 'validUntil'>, day: string): string | null {
  const why = held(clearOn, clearedOn, validUntil, day);
  if (why === null) return null;
  return `${NAMES[kind]} ${why}.${kind === 'utility-locate' ? ` ${LOCATE_CAUTION}` : ''}`;
}

function held(clearOn: string | null, clearedOn: string | null, validUntil: string | null, day: string): string | null {
  if (clearedOn === null) {
    if (clearOn === null) return 'is outstanding, and nobody has said until when';
    return clearOn > day ? `is expected on ${clearOn}, after this visit` : `was to be there by ${clearOn} and is not confirmed yet`;
  }
  if (clearedOn > day) return `is there only from ${clearedOn}, after this visit`;
  if (validUntil !== null && validUntil < day) return `holds only through ${validUntil}: ask for it anew`;
  return null;
}
