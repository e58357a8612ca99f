import { convert, toSi } from '../../domain/quantity/index.js';
import { longestChord } from '../../domain/trade/hydraulics/index.js';
import type { Takeoff } from '../../domain/trade/index.js';
import type { SurveyEntity } from './survey.entity.js';

/** A tape sags and bends around things. */
const TAPE_SLACK = 1.1;
/** The rod may have missed the deepest place, but hardly by so much. */
const DEEPER = 1.5;

/** Where a depth profile contradicts the outline or the readings: mostly a unit that was taken for another. */
export function profileWarnings({ outline, depthProfile }: SurveyEntity, { maxDepthM }: Takeoff): string[] {
  const warnings: string[] = [];
  const end = depthProfile?.at(-1)?.distance;
  if (depthProfile === null || end === undefined) return warnings;
  const chordM = outline.shape === 'measured' ? null : longestChord(outline);
  if (chordM !== null && toSi(end) > chordM * TAPE_SLACK) {
    warnings.push(`The depth profile is ${end.value} ${end.unit} long, and no straight line in the outline is longer than ${convert(chordM, 'm', end.unit).toFixed(1)} ${end.unit}: check both, and their units.`);
  }
  const deepest = depthProfile.map(({ depth }) => depth).reduce((a, b) => (toSi(b) > toSi(a) ? b : a));
  if (maxDepthM !== null && toSi(deepest) > maxDepthM * DEEPER) {
    warnings.push(`The depth profile goes down to ${deepest.value} ${deepest.unit}, and no reading deeper than ${convert(maxDepthM, 'm', deepest.unit).toFixed(1)} ${deepest.unit}: check both. A sheet of liner goes by the deeper one, the water by the readings.`);
  }
  return warnings;
}
