import { DomainError } from '../../../../domain/errors.js';
import { toSi } from '../../../../domain/quantity/index.js';
import { streamFlow, type StreamInput, type StreamState } from '../../../../domain/trade/stream/index.js';
import { calculation } from '../../calculation.js';
import { feetPerSecond, inUnit } from '../hydraulics/in-us-units.js';
import { toCurve } from '../hydraulics/pump.body.js';
import { toPumpingSystem } from '../hydraulics/pumping-system.body.js';
import { StreamFlowBody, StreamFlowView, type StreamStateView } from './stream-flow.dto.js';

export const STREAM_FLOW = calculation({
  name: 'stream-flow',
  title: 'Depth, velocity and flow of a stream, and what drains back from it',
  description:
    'Manning\'s formula for an even bed, rectangular or trapezoidal, with Chow\'s n of the lining, or with n by the stone size (Blodgett 1986, US Geological Survey), which shallow water over loose stone needs. For turbulent water deeper than 1.5 stones on a bed that falls at most 1 in 10; waterfalls in the stream are not part of it.',
  input: StreamFlowBody,
  output: StreamFlowView,
  run: (input: StreamFlowBody): StreamFlowView => {
    const { bottomWidth, sideSlope, length, fall, lining, stoneSize, basin } = input;
    const { wanted, withPump, pumpGivesIt, drainBack, working, warnings } = streamFlow({
      bed: { bottomWidthM: toSi(bottomWidth), sideSlope: sideSlope ?? 0, lengthM: toSi(length), fallM: toSi(fall), lining, stoneSizeM: stoneSize ? toSi(stoneSize) : null },
      wanted: wantedOf(input),
      pump: pumpOf(input),
      basin: basin ? { surfaceM2: toSi(basin.surface), freeboardM: toSi(basin.freeboard) } : null,
    });
    return {
      wanted: stateView(wanted),
      withPump: stateView(withPump),
      pumpGivesIt,
      drainsBack: inUnit(drainBack?.volumeM3 ?? null, 'gal'),
      basinRise: inUnit(drainBack?.riseM ?? null, 'in'),
      basinTakesIt: drainBack?.basinTakesIt ?? null,
      working,
      warnings,
    };
  },
});

function stateView(state: StreamState | null): StreamStateView | null {
  if (state === null) return null;
  const { flow, depthM, depthLeastM, depthMostM, roughness, velocity, froude, regime } = state;
  return {
    flow: inUnit(flow, 'gpm'),
    depth: inUnit(depthM, 'in'),
    depthLeast: inUnit(depthLeastM, 'in'),
    depthMost: inUnit(depthMostM, 'in'),
    roughness,
    velocityFtPerS: feetPerSecond(velocity),
    froude,
    regime,
  };
}

function wantedOf({ depth, flow }: StreamFlowBody): StreamInput['wanted'] {
  if (depth && flow) throw DomainError.at('/flow', 'Give either a depth or a flow; each follows from the other.');
  if (depth) return { depthM: toSi(depth) };
  return flow ? { flowM3PerS: toSi(flow) } : null;
}

function pumpOf({ system, pump }: StreamFlowBody): StreamInput['pump'] {
  if (system && pump) return { system: toPumpingSystem(system), curve: toCurve(pump.curve) };
  if (!system && !pump) return null;
  throw DomainError.at(system ? '/pump' : '/system', 'What the pump makes of the stream takes both the pump and its piping.');
}
