import { LININGS } from './linings.js';
import type { StreamBed } from './stream-bed.js';
import type { StreamState } from './stream-state.js';
import { STONE_RATIO } from './stone-roughness.js';

/** Steeper than 1 in 10 water tumbles from step to step and no uniform depth comes about (Chow's small slope, from memory). */
const STEEP = 0.1;
/** Turbulent in an open channel from about here (Chow, from memory). */
const TURBULENT_REYNOLDS = 2000;
/** Stones of a tenth of the depth or more make a flow very shallow. @see FHWA HEC-15, section 2.1.3, as quoted (read) */
const VERY_SHALLOW = 10;

/** Where a stream at a flow leaves the range of its formulas, and what the flow does to the bed. */
export function streamWarnings({ input, channel }: StreamBed, { depthM, meanDepthM, velocity, reynolds, regime }: StreamState): string[] {
  const { usualStoneM, movesAbove } = LININGS[input.lining];
  const ratio = input.stoneSizeM === null ? null : meanDepthM / input.stoneSizeM;
  return [
    ...(channel.bedSlope > STEEP ? ['The bed falls more than 1 in 10: Manning\'s formula is for an even stream; here water tumbles from stone to stone. Take the drops as waterfalls and the rest as the stream.'] : []),
    ...(ratio !== null && ratio < STONE_RATIO.least ? ['The water is shallower than 1.5 stones: it runs between the stones rather than over them, no formula holds, and it will stand deeper and slower than this says. Try it with a hose or a bucket.'] : []),
    ...(ratio !== null && ratio > STONE_RATIO.most ? ['The water is over 185 stones deep, beyond what the formula of the stone is stated for: leave the stone size out.'] : []),
    ...(ratio === null && usualStoneM !== null && depthM < VERY_SHALLOW * usualStoneM ? ['The water is shallow against the stones of such a bed, and the table\'s roughness is for deep water: give the stone size, else it stands deeper than this says.'] : []),
    ...(reynolds < TURBULENT_REYNOLDS ? ['So thin a sheet is not fully turbulent, which Manning\'s formula takes for granted: take the depth as a guess.'] : []),
    ...(regime === 'near-critical' ? ['The flow is near critical: waves stand in it and its depth wavers by a good deal. A little more or less fall calms it.'] : []),
    ...(regime === 'supercritical' ? ['The flow is rapid (supercritical): it splashes, shoots past bends and jumps up where it slows down; give bends and the end higher edges.'] : []),
    ...(movesAbove !== null && velocity > movesAbove ? [`At this velocity loose ${input.lining} may wash away (limits from memory): set it in mortar or foam, or take larger stone.`] : []),
  ];
}
