export { sedimentByPlace, type ByPlace } from './by-place.js';
export { EDGE_KINDS, type EdgeRule } from './edge-rule.js';
