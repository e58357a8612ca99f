import type { BlockerEntity, BlockerKind } from './blocker.entity.js';

const NAMES: Readonly<Record<BlockerKind, string>> = { 'utility-locate': 'The utility locate', permit: 'The permit', materials: 'The delivery of materials', other: 'What must come before' };

/**
 * The usual caution; how long to wait, how near to the marks a machine may go and for how long they hold is a matter of
 * local law, which differs from place to place.
 */
export const LOCATE_CAUTION = 'Call before you dig. Local law says how long to wait, how near to the marks machines may work and for how long the marks hold; private lines, such as those of pumps and lights, are often not marked.';

export type BlockerDays = Pick<BlockerEntity, 'kind' | 'requestedOn' | 'clearOn' | 'clearedOn' | 'validUntil' | 'reference' | 'note'>;

/** Of a note, so much that a warning stays one. */
const MOST_OF_NOTE = 80;

/**
 * Why work on some days is held up, or null when it is not.
 * @param day YYYY-MM-DD at the site, the day on which the work starts
 * @param lastDay the day on which it ends: marks that hold through the first day of a night's work lapse within it
 */
export function blockedBecause(blocker: BlockerDays, day: string, lastDay = day): string | null {
  const why = held(blocker, day, lastDay);
  if (why === null) return null;
  return `${NAMES[blocker.kind]}${which(blocker)} ${why}.${blocker.kind === 'utility-locate' ? ` ${LOCATE_CAUTION}` : ''}`;
}

/** Tells two permits apart, and says what another thing is: by its number, else by how its note begins. */
function which({ reference, note }: BlockerDays): string {
  const [said = ''] = (reference ?? note ?? '').split('\n');
  const letters = [...said.replace(/[.\s]+$/, '')];
  if (letters.length === 0) return '';
  return ` (${letters.length > MOST_OF_NOTE && reference === null ? `${letters.slice(0, MOST_OF_NOTE).join('').trimEnd()}…` : letters.join('')})`;
}

function held({ requestedOn, clearOn, clearedOn, validUntil }: BlockerDays, day: string, lastDay: string): string | null {
  if (clearedOn === null) {
    if (clearOn === null) return requestedOn === null ? 'has not been asked for yet' : `was asked for on ${requestedOn}, and nobody has said until when`;
    return clearOn > day ? `is expected on ${clearOn}, after this visit` : `was to be there by ${clearOn} and is not confirmed yet`;
  }
  if (clearedOn > day) return `is there only from ${clearedOn}, after this visit`;
  if (validUntil !== null && validUntil < lastDay) return `holds only through ${validUntil}: ask for it anew`;
  return null;
}
