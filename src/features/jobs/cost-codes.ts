import { Problem } from '../../platform/http/problem.js';

/** Cost codes that every job takes though no quote plans for them: driving, the yard, and making good. */
export const GENERAL_COST_CODES = ['travel', 'yard', 'warranty'] as const;

/** All codes that hours and costs of a job may be charged to: the plan's, then the general ones. */
export function costCodesOf(planned: readonly string[]): string[] {
  return [...new Set([...planned, ...GENERAL_COST_CODES])];
}

/**
 * A misspelled code would open a bucket of its own, and the planned one would look cheap for ever.
 * @throws Problem 422 at /costCode with the codes that are allowed
 */
export function requireCostCode(planned: readonly string[], costCode: string): void {
  const allowed = costCodesOf(planned);
  if (allowed.includes(costCode)) return;
  throw new Problem('not-possible', `The job has no cost code ${costCode}. Charge it to one of ${allowed.join(', ')}.`, [
    { pointer: '/costCode', detail: `must be one of ${allowed.join(', ')}` },
  ]);
}
