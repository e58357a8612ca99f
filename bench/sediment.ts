import { sedimentByEdge } from '../src/domain/trade/sediment/index.js';
import { cpuMilliseconds, type Measurement } from './measure.js';

const READINGS = 5_000;
const TURN = 2.399963229728653;

/** The largest survey that is taken, all its readings at places of their own (a sunflower's), in a pond with bays. */
function largestByPlace(): void {
  const points = Array.from({ length: 2_000 }, (_, i): [number, number] => {
    const turn = (2 * Math.PI * i) / 2_000;
    const radius = 40 + 3 * Math.sin(7 * turn);
    return [radius * Math.cos(turn), radius * Math.sin(turn)];
  });
  const readings = Array.from({ length: READINGS }, (_, i) => {
    const radius = 36 * Math.sqrt(i / READINGS);
    return { at: [radius * Math.cos(TURN * i), radius * Math.sin(TURN * i)] as [number, number], toSediment: 10 + (i % 13), toBottom: 23 + (i % 17) };
  });
  sedimentByEdge({ shape: 'polygon', unit: 'ft', points }, { unit: 'in', readings });
}

export function benchByPlace(): Measurement {
  const ours = cpuMilliseconds(largestByPlace);
  return { name: 'sediment by place from 5,000 readings in an outline of 2,000 points (CPU)', ours, yardstick: null, ratio: null, unit: 'ms', target: 'under 50 ms', met: ours < 50 };
}
