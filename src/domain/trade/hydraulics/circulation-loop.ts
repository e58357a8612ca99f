import { plain } from '../../decimal.js';
import { within } from '../../errors.js';
import type { Working } from '../../working.js';
import { flowWarnings } from './flow-warnings.js';
import type { CurvePoint } from '../pump-curve/index.js';
import { operatingPoint, type OperatingPoint } from './operating-point.js';
import { waterPower } from './power.js';
import { pumpCurve } from './pump-curve.js';
import { systemCurve, type PumpingSystem } from './pumping-system.js';
import { runLossesAt, type RunLosses } from './run-losses.js';
import { GRAVITY, WATER_DENSITY } from './water.js';
import { whyNoPoint } from './why-no-point.js';

export interface LoopInput {
  readonly system: PumpingSystem;
  readonly pump: { readonly curve: readonly CurvePoint[]; readonly powerW: number | null };
  readonly waterVolumeM3: number | null;
}

/** A circulation loop at work; null where pump and system do not meet or an input was left out. */
export interface LoopResult {
  /** By Hazen-Williams and, beside it, by Darcy-Weisbach. m3/s, m. */
  readonly hazenWilliams: OperatingPoint;
  readonly darcyWeisbach: OperatingPoint;
  readonly runs: readonly RunLosses[];
  readonly turnoverHours: number | null;
  /** Share of the electrical power that reaches the water. */
  readonly wireToWater: number | null;
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * The operating point of one pump on one system, with what each run loses there.
 * @throws DomainError at /system/…, /pump/curve/i/flow and /pump/curve/i/head
 */
export function circulationLoop({ system, pump, waterVolumeM3 }: LoopInput): LoopResult {
  const load = within('/system', () => systemCurve(system));
  const curve = within('/pump/curve', () => pumpCurve(pump.curve));
  const hazenWilliams = operatingPoint(curve, load, 'hazen-williams');
  const darcyWeisbach = operatingPoint(curve, load, 'darcy-weisbach');
  const flow = hazenWilliams.kind === 'point' ? hazenWilliams.flow : null;
  // Without an operating point the losses are shown where the curve comes nearest: at its end, or standing still.
  const at = flow ?? (hazenWilliams.kind === 'past-curve' ? hazenWilliams.flow : 0);
  const runs = runLossesAt(load, at);
  const head = load.headAt(at, 'hazen-williams');
  const output = flow === null ? null : waterPower(flow, head);
  const wireToWater = output === null || pump.powerW === null ? null : output / pump.powerW;
  const turnoverHours = flow === null || flow === 0 || waterVolumeM3 === null ? null : waterVolumeM3 / flow / 3600;
  const vessels = load.vesselFactors.map((factor) => factor * at * at);
  const working: Working = {
    rule: 'The pump delivers where its curve meets static lift + friction (Hazen-Williams) + minor losses (K V²/2g) + losses of vessels',
    inputs: [
      { name: 'static lift', value: plain(system.staticLiftM), unit: 'm' },
      ...pump.curve.map(({ flowM3PerS, headM }, i) => ({ name: `head at curve point ${i + 1}, ${plain(flowM3PerS)} m3/s`, value: plain(headM), unit: 'm' })),
    ],
    steps: [
      { label: 'flow', expression: flow === null ? 'no meeting of the curves; losses are shown at this flow' : 'bisection of pump head − system head', value: plain(at), unit: 'm3/s' },
      ...runs.flatMap((run, i) => runSteps(run, system, i, plain(at))),
      ...vessels.map((value, i) => ({ label: `loss of ${system.vessels[i]?.name ?? ''}`, expression: `${plain(load.vesselFactors[i] ?? 0)} × ${plain(at)}²`, value: plain(value), unit: 'm' })),
      { label: 'total dynamic head', expression: [system.staticLiftM, ...runs.flatMap((run) => [run.hazenWilliamsM, run.minorM]), ...vessels].map(plain).join(' + '), value: plain(head), unit: 'm' },
      ...(wireToWater === null ? [] : [{ label: 'wire-to-water efficiency', expression: `${plain(WATER_DENSITY)} × ${plain(GRAVITY)} × ${plain(at)} × ${plain(head)} / ${plain(pump.powerW ?? 0)}`, value: plain(wireToWater) }]),
      ...(turnoverHours === null ? [] : [{ label: 'turnover time', expression: `${plain(waterVolumeM3 ?? 0)} / ${plain(at)} / 3600`, value: plain(turnoverHours), unit: 'h' }]),
    ],
  };
  const warnings = [
    ...(hazenWilliams.kind === 'point' ? [] : [`No operating point: ${whyNoPoint(hazenWilliams)}`]),
    ...(wireToWater !== null && wireToWater >= 1 ? ['The pump would put more power into the water than it draws: check its power and its curve.'] : []),
    ...flowWarnings(load, at),
  ];
  return { hazenWilliams, darcyWeisbach, runs, turnoverHours, wireToWater, working, warnings };
}

function runSteps({ velocity, hazenWilliamsM, minorM, sumOfK }: RunLosses, { runs }: PumpingSystem, i: number, q: string): Working['steps'] {
  const run = runs[i];
  if (run === undefined) return [];
  const d = plain(run.innerDiameterM);
  return [
    { label: `velocity in run ${i + 1}`, expression: `4 × ${q} / (π × ${d}²)`, value: plain(velocity), unit: 'm/s' },
    { label: `friction in run ${i + 1}`, expression: `10.67 × ${plain(run.lengthM)} × ${q}^1.852 / (${plain(run.hazenWilliamsC)}^1.852 × ${d}^4.871)`, value: plain(hazenWilliamsM), unit: 'm' },
    { label: `minor losses in run ${i + 1}`, expression: `${plain(sumOfK)} × ${plain(velocity)}² / (2 × ${plain(GRAVITY)})`, value: plain(minorM), unit: 'm' },
  ];
}
