import type { Decimal } from '../decimal.js';
import { plain } from '../decimal.js';
import type { Working, WorkingStep } from '../working.js';
import { metresPer, scaled } from './numbers.js';
import type { Probes } from './probes.js';

/** A mean or extreme of the readings, in metres, with how it came about. */
export interface DepthFigure {
  readonly metres: number;
  readonly working: Working;
}

export interface ProbeFigures {
  readonly thickness: DepthFigure;
  readonly depth: DepthFigure;
  readonly depthToSediment: DepthFigure;
  readonly deepest: DepthFigure;
}

/** Longer lists are summed, not copied: a working is stored with every line that leans on it. */
const LISTED_READINGS = 60;

/** Means of checked readings: computed in the entered unit, converted once. Every reading weighs the same. */
export function probeFigures(probes: Probes): ProbeFigures {
  const factor = metresPer(probes.unit);
  const bottoms = probes.readings.map((reading) => reading.toBottom);
  const tops = probes.readings.map((reading) => reading.toSediment);
  const layers = probes.readings.map((reading) => reading.toBottom - reading.toSediment);
  const mean = (rule: string, values: readonly number[]): DepthFigure => meanOf(rule, values, probes.unit, factor);
  const max = bottoms.reduce((a, b) => Math.max(a, b));
  return {
    thickness: mean('Mean sediment thickness: mean of (depth to hard bottom - depth to sediment)', layers),
    depth: mean('Mean depth after clean-out: mean of the depths to hard bottom', bottoms),
    depthToSediment: mean('Mean depth as found: mean of the depths to sediment', tops),
    deepest: figure('Greatest depth to hard bottom of all readings', bottoms, factor, max, [
      { label: 'greatest', expression: `max of ${bottoms.length} readings`, value: plain(max), unit: probes.unit },
    ]),
  };
}

function meanOf(rule: string, values: readonly number[], unit: string, factor: Decimal): DepthFigure {
  const sum = values.reduce((a, b) => a + b, 0);
  const mean = sum / values.length;
  const terms = values.length > LISTED_READINGS ? `sum of ${values.length} readings` : values.map(plain).join(' + ');
  return figure(rule, values, factor, mean, [
    { label: 'sum', expression: terms, value: plain(sum), unit },
    { label: 'mean', expression: `${plain(sum)} / ${values.length}`, value: plain(mean), unit },
  ]);
}

function figure(
  rule: string,
  values: readonly number[],
  factor: Decimal,
  entered: number,
  steps: WorkingStep[],
): DepthFigure {
  const metres = scaled(entered, factor);
  const last = { label: 'in metres', expression: `${plain(entered)} × ${plain(factor)}`, value: plain(metres), unit: 'm' };
  return {
    metres,
    working: { rule, inputs: [{ name: 'readings', value: String(values.length), unit: 'each' }], steps: [...steps, last] },
  };
}
