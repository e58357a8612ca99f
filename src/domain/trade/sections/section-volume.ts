import { plain } from '../../decimal.js';
import { DomainError, type Violation } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { methodWarnings } from './method-warnings.js';
import type { Section } from './section.js';

export interface SectionVolume {
  readonly endAreaM3: number;
  readonly frustumM3: number;
  /** Null unless there is an odd number of sections, evenly apart. */
  readonly prismoidalM3: number | null;
  readonly working: Working;
  readonly warnings: string[];
}

/** Sections this close to evenly apart are: tapes and levels are read no better. */
const EVENLY = 1e-6;

/**
 * The volume between areas that were measured one after another, by three formulas, since none of them is right for every
 * shape: the mean of each two areas (exact for a paraboloid, half too much where a cone closes), the frustum with
 * √(A₁A₂) between (exact for cone and pyramid), and, through each three areas, the prismoidal formula
 * (A + 4B + C)/6 (exact for every prismoid, cone and paraboloid).
 * @throws DomainError at "" for fewer than two sections or areas that are all 0, at /i/at when they do not grow, at /i/area below 0
 * @see USDA NRCS, Agriculture Handbook 590, "Excavated ponds", prismoidal formula (from memory); NAVEDTRA 14080, ch. 4, end areas
 */
export function sectionVolume(sections: readonly Section[]): SectionVolume {
  check(sections);
  const pairs = sections.slice(1).map((to, i) => ({ from: sections[i] as Section, to }));
  const endAreas = pairs.map(({ from, to }) => ((to.atM - from.atM) * (from.areaM2 + to.areaM2)) / 2);
  const frusta = pairs.map(({ from, to }) => ((to.atM - from.atM) * (from.areaM2 + to.areaM2 + Math.sqrt(from.areaM2 * to.areaM2))) / 3);
  const [endAreaM3, frustumM3, prismoidalM3] = [sum(endAreas), sum(frusta), prismoidal(sections)];
  const working: Working = {
    rule: 'end areas: sum of h × (A1 + A2) / 2; frusta: sum of h × (A1 + A2 + √(A1 × A2)) / 3; prismoidal: sum of 2h × (A + 4 × B + C) / 6',
    inputs: sections.flatMap(({ atM, areaM2 }, i) => [given(`place ${i + 1}`, atM, 'm'), given(`area ${i + 1}`, areaM2, 'm2')]),
    steps: [
      step('by end areas', endAreas.map(plain).join(' + '), endAreaM3, 'm3'),
      step('by frusta', frusta.map(plain).join(' + '), frustumM3, 'm3'),
      ...(prismoidalM3 === null ? [] : [step('by the prismoidal formula', `over ${(sections.length - 1) / 2} times three areas`, prismoidalM3, 'm3')]),
    ],
  };
  return { endAreaM3, frustumM3, prismoidalM3, working, warnings: methodWarnings(sections, [endAreaM3, frustumM3, ...(prismoidalM3 === null ? [] : [prismoidalM3])]) };
}

function check(sections: readonly Section[]): void {
  if (sections.length < 2) throw DomainError.at('', 'A volume lies between two sections at least.');
  const violations = sections.flatMap(({ atM, areaM2 }, i): Violation[] => {
    const before = sections[i - 1];
    return [
      ...(before !== undefined && !(atM > before.atM) ? [{ pointer: `/${i}/at`, detail: 'Each section lies farther on than the one before; give them in order.' }] : []),
      ...(areaM2 >= 0 ? [] : [{ pointer: `/${i}/area`, detail: 'An area is 0 or more.' }]),
    ];
  });
  if (violations.length > 0) throw new DomainError(violations);
  if (!sections.some(({ areaM2 }) => areaM2 > 0)) throw DomainError.at('', 'At least one of the areas must be more than 0.');
}

function prismoidal(sections: readonly Section[]): number | null {
  const gaps = sections.slice(1).map(({ atM }, i) => atM - (sections[i] as Section).atM);
  const mean = sum(gaps) / gaps.length;
  if (sections.length % 2 === 0 || gaps.some((gap) => Math.abs(gap / mean - 1) > EVENLY)) return null;
  return (mean / 3) * sum(sections.map(({ areaM2 }, i) => areaM2 * (i === 0 || i === sections.length - 1 ? 1 : i % 2 === 1 ? 4 : 2)));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
