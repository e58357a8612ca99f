/** One measured thing beside its yardstick, taken in the same run. */
export interface Measurement {
  readonly name: string;
  readonly ours: number;
  /** null where the target is a plain figure, not a ratio. */
  readonly yardstick: number | null;
  readonly ratio: number | null;
  readonly unit: string;
  readonly target: string;
  readonly met: boolean;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? (sorted[middle] ?? NaN) : ((sorted[middle - 1] ?? NaN) + (sorted[middle] ?? NaN)) / 2;
}

/** CPU milliseconds, user and system, that one call takes: the median over the rounds after a warm-up. */
export function cpuMilliseconds(work: () => void, rounds = 60, warmUp = 15): number {
  return median(cpuTimes(work, rounds, warmUp).times);
}

/**
 * CPU milliseconds, user and system, of the first call and of each round after a warm-up; fewer rounds, but never under
 * ten, when they would take more than `budgetMs`.
 */
export function cpuTimes(work: () => void, rounds: number, warmUp: number, budgetMs = Infinity): { first: number; times: number[] } {
  const first = cpuOf(work);
  const share = Math.min(1, budgetMs / ((rounds + warmUp) * first));
  const [before, measured] = [warmUp, rounds].map((count) => Math.max(10, Math.round(count * share))) as [number, number];
  for (let round = 1; round < before; round += 1) cpuOf(work);
  return { first, times: Array.from({ length: measured }, () => cpuOf(work)) };
}

/** The value that the share `of` of all values does not exceed. */
export function percentile(values: readonly number[], of: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(of * sorted.length) - 1)] ?? NaN;
}

function cpuOf(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}
