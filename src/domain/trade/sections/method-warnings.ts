import type { Section } from './section.js';

/** Methods further apart than this are said: neither of them is the right one. */
const APART = 0.05;

/** What to look at again before a volume by sections is priced from. */
export function methodWarnings(sections: readonly Section[], volumesM3: readonly number[]): string[] {
  const [least, most] = [Math.min(...volumesM3), Math.max(...volumesM3)];
  const warnings: string[] = [];
  if (most - least > APART * most) {
    warnings.push(`The formulas differ by ${((100 * (most - least)) / most).toFixed(0)} %: take them as bounds, or measure an area between the sections that differ most.`);
  }
  if ([sections[0], sections.at(-1)].some((end) => end?.areaM2 === 0)) {
    warnings.push('Where a shape closes to nothing, end areas give half too much of a cone and the right volume of a bowl.');
  }
  if (sections.length === 2) warnings.push('From two areas alone nothing is known of what lies between: measure one in the middle.');
  return warnings;
}
