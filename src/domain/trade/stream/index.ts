export type { Basin, DrainBack } from './drain-back.js';
export { LINING_NAMES, LININGS, type Lining } from './linings.js';
export { manningFlow, normalDepth, sectionAt, type Channel, type Roughness } from './manning.js';
export { stoneRoughness } from './stone-roughness.js';
export type { StreamBedInput } from './stream-bed.js';
export { FLOW_REGIMES, type FlowRegime, type StreamState } from './stream-state.js';
export { streamFlow, type StreamFlow, type StreamInput } from './stream-flow.js';
