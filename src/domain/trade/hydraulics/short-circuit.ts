import { plain } from '../../decimal.js';
import { DomainError, within } from '../../errors.js';
import type { Working } from '../../working.js';
import { measureOutline } from '../measure-outline.js';
import { lengthInMetres } from '../numbers.js';
import type { Outline } from '../outline.js';
import { farthestApart } from './farthest-apart.js';

/** Under this share of the longest chord, fresh water runs back to the pump past still corners (common practice). */
const LEAST_SHARE = 0.5;

export interface ShortCircuit {
  readonly longestChordM: number;
  /** Distance from suction to discharge over the longest chord. */
  readonly share: number;
  readonly tooClose: boolean;
  readonly working: Working;
}

/**
 * Whether suction and discharge stand too close together for the whole pond to turn over.
 * @param distanceM in a straight line from suction to discharge, m
 * @throws DomainError at /outline/… or /distance
 */
export function shortCircuit(outline: Outline, distanceM: number): ShortCircuit {
  const longestChordM = within('/outline', () => longestChord(outline));
  if (!(distanceM >= 0)) throw DomainError.at('/distance', 'The distance must not be negative.');
  if (distanceM > longestChordM * (1 + 1e-9)) throw DomainError.at('/distance', 'Suction and discharge lie farther apart than the longest straight line in the outline; check both.');
  const share = distanceM / longestChordM;
  const working: Working = {
    rule: 'Suction and discharge should stand at least half the longest straight line of the outline apart',
    inputs: [
      { name: 'distance from suction to discharge', value: plain(distanceM), unit: 'm' },
      { name: 'longest chord', value: plain(longestChordM), unit: 'm' },
    ],
    steps: [{ label: 'share of the longest chord', expression: `${plain(distanceM)} / ${plain(longestChordM)}`, value: plain(share) }],
  };
  return { longestChordM, share, tooClose: share < LEAST_SHARE, working };
}

/** The longest straight line between two points of an outline, m. @throws DomainError at /shape when only area and perimeter are known */
export function longestChord(outline: Outline): number {
  const { points } = measureOutline(outline);
  if (points !== null) return farthestApart(points);
  if (outline.shape === 'rectangle' || outline.shape === 'ellipse') {
    const [length, width] = [lengthInMetres(outline.length), lengthInMetres(outline.width)];
    return outline.shape === 'ellipse' ? Math.max(length, width) : Math.hypot(length, width);
  }
  throw DomainError.at('/shape', 'Area and perimeter do not tell how long the pond is; give its shape.');
}
