import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import type { Working, WorkingStep } from '../../working.js';
import { given, step } from '../working-lines.js';

/** One stretch of the way from the edge inward: a wall (no run), a shelf (no drop) or a slope (both). */
export interface ProfileStep {
  /** m, 0 or more */
  readonly dropM: number;
  /** Horizontal; m, 0 or more. */
  readonly runM: number;
}

export interface LinerSheet {
  readonly lengthM: number;
  readonly widthM: number;
  readonly areaM2: number;
  /** By the usual rule, span + 2 × depth + 2 × overlap, which is never shorter. */
  readonly ruleLengthM: number;
  readonly ruleWidthM: number;
  readonly depthM: number;
  /** What the sheet is longer and wider by than the outline. */
  readonly marginM: number;
  readonly warnings: string[];
  readonly working: Working;
}

/** What a sheet is longer and wider by than the outline, once it lies on the profile. @throws DomainError at /profile/i or /overlap */
export function sheetMargin(profile: readonly ProfileStep[], overlapM: number): { marginM: number; runM: number; depthM: number; pathM: number } {
  profile.forEach(({ dropM, runM }, i) => {
    if (!(dropM >= 0 && runM >= 0 && dropM + runM > 0)) throw DomainError.at(`/profile/${i}`, 'A stretch must go down, inward or both; neither may be below 0.');
  });
  if (!(overlapM >= 0)) throw DomainError.at('/overlap', 'The overlap must be 0 or more.');
  const sum = (of: (one: ProfileStep) => number): number => profile.reduce((total, one) => total + of(one), 0);
  const [runM, depthM, pathM] = [sum(({ runM: run }) => run), sum(({ dropM }) => dropM), sum(({ runM: run, dropM }) => Math.sqrt(run * run + dropM * dropM))];
  return { marginM: 2 * (pathM - runM) + 2 * overlapM, runM, depthM, pathM };
}

/**
 * Size of one sheet: span − 2 × runs + 2 × path + 2 × overlap, the path being the developed length of the profile, alike on
 * every side. With vertical walls and shelves this equals the usual rule span + 2 × depth + 2 × overlap; slopes need less.
 * Rule: common practice; developed length: definition.
 * @param lengthM greatest length of the outline, above 0
 * @param widthM greatest width across it, above 0
 * @param profile from the edge inward, the deepest point last
 * @param overlapM past the edge on each side, 0 or more
 * @throws DomainError at /profile (its runs do not fit into the width), /profile/i or /overlap
 */
export function linerSheet(lengthM: number, widthM: number, profile: readonly ProfileStep[], overlapM: number): LinerSheet {
  const { marginM, runM, depthM, pathM } = sheetMargin(profile, overlapM);
  // Slopes that meet exactly in the middle may overshoot by binary dust.
  if (2 * runM > Math.min(lengthM, widthM) * (1 + 1e-9)) throw DomainError.at('/profile', 'The runs of both sides together are wider than the outline; check the runs and their units.');
  const [sheetLengthM, sheetWidthM] = [lengthM + marginM, widthM + marginM];
  const areaM2 = sheetLengthM * sheetWidthM;
  const ruleMarginM = 2 * depthM + 2 * overlapM;
  const side = (name: string, span: number, result: number): WorkingStep =>
    step(name, `${plain(span)} − 2 × ${plain(runM)} + 2 × ${plain(pathM)} + 2 × ${plain(overlapM)}`, result, 'm');
  const working: Working = {
    rule: 'sheet = span − 2 × runs of the profile + 2 × its path + 2 × overlap, in each direction',
    inputs: [given('length', lengthM, 'm'), given('width', widthM, 'm'), given('overlap', overlapM, 'm'), ...profile.flatMap(({ dropM, runM: run }, i) => [given(`drop ${i + 1}`, dropM, 'm'), given(`run ${i + 1}`, run, 'm')])],
    steps: [
      step('path of the profile', 'sum of √(drop² + run²)', pathM, 'm'),
      side('sheet length', lengthM, sheetLengthM),
      side('sheet width', widthM, sheetWidthM),
      step('area', `${plain(sheetLengthM)} × ${plain(sheetWidthM)}`, areaM2, 'm2'),
    ],
  };
  return { lengthM: sheetLengthM, widthM: sheetWidthM, areaM2, ruleLengthM: lengthM + ruleMarginM, ruleWidthM: widthM + ruleMarginM, depthM, marginM, warnings: warningsOf(profile, overlapM), working };
}

function warningsOf(profile: readonly ProfileStep[], overlapM: number): string[] {
  const warnings = ['Folds in corners and curves, and laps under a waterfall or stream, come on top of this size.'];
  if (overlapM < 0.3) warnings.push('Less than about 1 ft (0.3 m) past the edge leaves little to fix and to correct (common practice).');
  if (profile.some(({ dropM, runM }) => dropM > runM)) {
    warnings.push('Sides are steeper than 1:1, the limit of NRCS Arizona specification 521A for an exposed membrane: agricultural guidance, which garden ponds often exceed, but soil must stand by itself.');
  }
  return warnings;
}
