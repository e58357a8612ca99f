export { CARRIER_NAMES, CARRIERS, type Carrier, type CarrierName } from './carriers.js';
export { excavatorLooseM3PerH, HAND_DIGGING_M3_PER_H, HAND_DIGGINGS, type Excavator, type HandDigging } from './digging.js';
export { haulCycle, type HaulCycle } from './haul-cycle.js';
export type { HaulInput } from './haul-input.js';
export { byHand, SANITY_BAND } from './haul-warnings.js';
