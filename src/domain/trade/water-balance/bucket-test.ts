import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';

/** About 95 % of outcomes lie within this many standard uncertainties. */
const COVERAGE = 2;

/** One test: a weighted bucket on a step, both levels marked, auto-fill off, no rain. */
export interface BucketRun {
  /** Drop of the pond's level; m, below 0 when it rose. */
  readonly pondDropM: number;
  /** Drop of the bucket's level, which is evaporation alone; m. */
  readonly bucketDropM: number;
  /** Above 0. */
  readonly hours: number;
}

export interface Reading {
  /** How closely one mark can be read, plus or minus; m, above 0. */
  readonly readingM: number;
  /** How closely the water surface is known, plus or minus; percent of it, 0 or more. */
  readonly areaPercent: number;
}

export interface LeakRate {
  /** m3 a day; below 0 when the pond gained. */
  readonly leakM3PerDay: number;
  /** Half of the interval of about 95 %; m3 a day. */
  readonly uncertaintyM3PerDay: number;
  /** The runs disagree by more than their reading can explain. */
  readonly scattered: boolean;
  readonly working: Working;
}

/**
 * Leak = (pond drop − bucket drop) × area × 24 / hours, the runs weighted by the inverse square of their uncertainty. A run
 * has four marks, each known within ± a (rectangular, a/√3), so its difference has 2a/√3. Runs that scatter more than that
 * widen the interval (Birge ratio). The area's own ± widens it in proportion to the leak. Coverage factor 2.
 * @param runs 1 or more, of one pump state
 * @param areaM2 water surface, above 0
 * @throws DomainError at /area, /reading or /runs/i/hours
 * @see JCGM 100:2008 (GUM), 4.3.7 (rectangular limits), 5.1.2 (combination), 6.2 (expanded uncertainty); the test itself is common practice
 */
export function leakRate(runs: readonly BucketRun[], areaM2: number, { readingM, areaPercent }: Reading): LeakRate {
  if (!(areaM2 > 0)) throw DomainError.at('/area', 'The area must be more than 0.');
  if (!(readingM > 0)) throw DomainError.at('/reading', 'How closely a mark can be read must be more than 0.');
  runs.forEach(({ hours }, i) => {
    if (!(hours > 0)) throw DomainError.at(`/runs/${i}/hours`, 'The duration must be more than 0.');
  });
  const rows = runs.map(({ pondDropM, bucketDropM, hours }) => {
    const perDay = 24 / hours;
    return { rate: (pondDropM - bucketDropM) * areaM2 * perDay, u: ((2 * readingM) / Math.sqrt(3)) * areaM2 * perDay };
  });
  const weights = rows.map(({ u }) => 1 / u ** 2);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const leakM3PerDay = rows.reduce((sum, { rate }, i) => sum + rate * (weights[i] ?? 0), 0) / total;
  const chi2 = rows.reduce((sum, { rate, u }) => sum + ((rate - leakM3PerDay) / u) ** 2, 0);
  const birge = rows.length > 1 ? Math.max(1, Math.sqrt(chi2 / (rows.length - 1))) : 1;
  const fromReading = birge / Math.sqrt(total);
  const fromArea = (Math.abs(leakM3PerDay) * areaPercent) / 100 / Math.sqrt(3);
  const uncertaintyM3PerDay = COVERAGE * Math.sqrt(fromReading ** 2 + fromArea ** 2);
  const working: Working = {
    rule: 'leak = (pond drop − bucket drop) × area × 24 / hours; runs weighted by 1 / uncertainty²',
    inputs: [given('area', areaM2, 'm2'), given('one mark, plus or minus', readingM, 'm'), given('area, plus or minus', areaPercent, 'percent')],
    steps: [
      ...runs.map((run, i) => step(`run ${i + 1}`, `(${plain(run.pondDropM)} − ${plain(run.bucketDropM)}) × ${plain(areaM2)} × 24 / ${plain(run.hours)}`, rows[i]?.rate ?? 0, 'm3/d')),
      step('leak, weighted mean', 'sum of weight × rate / sum of weights', leakM3PerDay, 'm3/d'),
      step('widening by scatter (Birge ratio)', `max(1, √(${plain(chi2)} / ${Math.max(1, rows.length - 1)}))`, birge),
      step('standard uncertainty from reading', `${plain(birge)} / √(sum of weights)`, fromReading, 'm3/d'),
      step('standard uncertainty from the area', `|leak| × ${plain(areaPercent)} / 100 / √3`, fromArea, 'm3/d'),
      step('uncertainty, about 95 %', `2 × √(${plain(fromReading)}² + ${plain(fromArea)}²)`, uncertaintyM3PerDay, 'm3/d'),
    ],
  };
  return { leakM3PerDay, uncertaintyM3PerDay, scattered: birge > 2, working };
}
