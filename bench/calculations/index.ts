import { CALCULATIONS } from '../../src/features/calculations/topics/index.js';
import { CALCULATION_EXAMPLES } from '../../test/support/calculation-examples.js';
import { cpuTimes, percentile, type Measurement } from '../measure.js';
import { LARGEST_INPUTS } from './largest-inputs.js';

const TARGET_MS = 5;
const ROUNDS = 200;
const WARM_UP = 50;
/** So that the slowest of them take seconds and not minutes. */
const BUDGET_MS = 1_500;

/**
 * Every calculation of the list with its example, and those that take lists with the largest that they admit. The median
 * after a warm-up counts; beside it stand the 99th percentile, which has the collector's pauses in it, and the first call
 * of this process, which has the compiling of the code in it.
 */
export function benchCalculations(): Measurement[] {
  const rows = CALCULATIONS.flatMap(({ name, run }) => {
    const example = CALCULATION_EXAMPLES[name];
    if (example === undefined) throw new Error(`The calculation ${name} has no example.`);
    const largest = (LARGEST_INPUTS[name] ?? []).map(({ what, input, targetMs }) => ({ what: `${name}, ${what}`, work: () => run(input), targetMs: targetMs ?? TARGET_MS }));
    return [{ what: name, work: () => run(example), targetMs: TARGET_MS }, ...largest];
  });
  const width = Math.max(...rows.map(({ what }) => what.length));
  return rows.map(({ what, work, targetMs }): Measurement => {
    const { first, times } = cpuTimes(work, ROUNDS, WARM_UP, BUDGET_MS);
    const ours = percentile(times, 0.5);
    const name = `${what.padEnd(width)}  p99 ${shown(percentile(times, 0.99))}  first ${shown(first)}  median`;
    return { name, ours, yardstick: null, ratio: null, unit: 'ms', target: `under ${targetMs} ms of CPU`, met: ours < targetMs };
  });
}

function shown(milliseconds: number): string {
  return milliseconds.toFixed(2).padStart(7);
}
