export { sedimentByEdge, sedimentByPlace, type ByPlace } from './by-place.js';
export { EDGE_KINDS, type EdgeRule } from './edge-rule.js';
export { loadsOf, type Loads, type Vehicle } from './loads.js';
export { organicMudDensity, saturatedDensity, WATER_KG_PER_M3, type SedimentDensity } from './phases.js';
export { sedimentStages, type SedimentInput, type SedimentStages, type Stage } from './stages.js';
export { errorWarnings, volumeError, type VolumeError } from './volume-error.js';
