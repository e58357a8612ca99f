import { DomainError, within } from '../../errors.js';
import type { Working } from '../../working.js';
import { operatingPoint, pumpCurve, shownFlow, systemCurve, type PumpingSystem } from '../hydraulics/index.js';
import { requirePositive, requireWithin } from '../input-checks.js';
import type { CurvePoint } from '../pump-curve/index.js';
import { drainBack, type Basin, type DrainBack } from './drain-back.js';
import { manningFlow, MOST_DEPTH_M, sectionAt } from './manning.js';
import { streamBed, type StreamBed, type StreamBedInput } from './stream-bed.js';
import { streamState, type StreamState } from './stream-state.js';
import { streamWarnings } from './stream-warnings.js';
import { streamWorking } from './stream-working.js';

export interface StreamInput {
  readonly bed: StreamBedInput;
  /** The depth that the stream should have, or the flow that it should carry; null to ask what the pump makes of it. */
  readonly wanted: { readonly depthM: number } | { readonly flowM3PerS: number } | null;
  readonly pump: { readonly system: PumpingSystem; readonly curve: readonly CurvePoint[] } | null;
  readonly basin: Basin | null;
}

export interface StreamFlow {
  readonly wanted: StreamState | null;
  /** At the pump's operating point (Hazen-Williams); null without a pump, or when pump and piping do not meet. */
  readonly withPump: StreamState | null;
  readonly pumpGivesIt: boolean | null;
  /** Of the deeper of both, with the most roughness of the lining: the basin must take what may come; null without either. */
  readonly drainBack: DrainBack | null;
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * An even stream by Manning's formula: depth, velocity and Froude number of a flow, or the flow that a depth needs;
 * whether a pump gives it; and what drains back when the pump stops.
 *
 * Range: turbulent water on a straight, even bed of at most 1 in 10, deeper than 1.5 stones; warnings say where it is left.
 * @throws DomainError at /bottomWidth, /sideSlope, /length, /fall, /stoneSize, /depth, /flow, /system/…, /pump/…, /basin/…
 */
export function streamFlow({ bed: bedInput, wanted: asked, pump, basin }: StreamInput): StreamFlow {
  if (asked === null && pump === null) throw DomainError.at('/depth', 'Give a depth, a flow or a pump; else there is nothing to compute.');
  const bed = streamBed(bedInput);
  const wanted = asked === null ? null : wantedState(bed, asked);
  const point = pump && operatingPoint(within('/pump/curve', () => pumpCurve(pump.curve)), within('/system', () => systemCurve(pump.system)), 'hazen-williams');
  const withPump = point?.kind === 'point' ? streamState(bed, point.flow, null, '/pump/curve') : null;
  const states = [wanted, withPump].filter((state) => state !== null);
  const deepest = Math.max(0, ...states.map(({ depthM, depthMostM }) => depthMostM ?? depthM));
  const back = deepest > 0 ? drainBack(bedInput.lengthM, sectionAt(bed.channel, deepest).areaM2, basin) : null;
  const pumpGivesIt = point === null || wanted === null ? null : withPump !== null && withPump.flow >= wanted.flow * (1 - 1e-9);
  const warnings = [
    ...new Set(states.flatMap((state) => streamWarnings(bed, state))),
    ...(point && point.kind !== 'point' ? ['Pump and piping do not meet within the pump\'s curve; see the circulation loop for the reason.'] : []),
    ...(wanted !== null && withPump !== null && pumpGivesIt === false ? [`The pump gives ${shownFlow(withPump.flow)} of the ${shownFlow(wanted.flow)} needed.`] : []),
    ...(back?.basinTakesIt === false ? ['When the pump stops, the basin overflows: more freeboard, a larger basin, or sills that keep water in the stream.'] : []),
    'The formula is for an even bed. Pools behind stones and sills stand deeper and keep their water when the pump stops; when it starts, the basin falls by what the stream takes up.',
  ];
  return { wanted, withPump, pumpGivesIt, drainBack: back, working: streamWorking(bed, { wanted, withPump }, { deepest, back, basin }), warnings };
}

function wantedState(bed: StreamBed, asked: NonNullable<StreamInput['wanted']>): StreamState {
  if ('flowM3PerS' in asked) {
    requirePositive('/flow', asked.flowM3PerS);
    return streamState(bed, asked.flowM3PerS, null, '/flow');
  }
  requirePositive('/depth', asked.depthM);
  requireWithin('/depth', asked.depthM, 0, MOST_DEPTH_M, 'm');
  return streamState(bed, manningFlow(bed.channel, bed.usual, asked.depthM), asked.depthM, '/depth');
}
