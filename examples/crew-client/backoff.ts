/** Milliseconds. */
const FIRST = 1_000;
const LONGEST = 5 * 60_000;

/**
 * How long to wait before the next attempt: anything up to a bound that doubles with each failure. Without the chance
 * in it, all phones of a valley that got its signal back would knock at the same moment, again and again.
 * @param failures in a row, 1 or more
 * @param asked seconds that the service asked for; null when it did not
 * @returns milliseconds
 */
export function waitBefore(failures: number, asked: number | null, random: () => number): number {
  const bound = Math.min(LONGEST, FIRST * 2 ** (failures - 1));
  return Math.max((asked ?? 0) * 1_000, random() * bound);
}
