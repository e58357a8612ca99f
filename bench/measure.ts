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
  const taken: number[] = [];
  for (let round = 0; round < warmUp + rounds; round++) {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    if (round >= warmUp) taken.push((user + system) / 1000);
  }
  return median(taken);
}
