export {
  MAX_LENGTH_M,
  MAX_OUTLINE_POINTS,
  OUTLINE_SHAPES,
  type BoxOutline,
  type MeasuredOutline,
  type Outline,
  type Point,
  type PolygonOutline,
  type TwoStakeOutline,
} from './outline.js';
export { MAX_DEPTH_M, MAX_READINGS, type ProbeReading, type Probes } from './probes.js';
export { measureOutline } from './measure-outline.js';
export type { MeasuredShape } from './measured-shape.js';
export { parseOutline } from './parse-outline.js';
export { parseProbes } from './parse-probes.js';
export { takeoff, type Takeoff, type TakeoffInput } from './takeoff.js';
export { takeoffValue, type TakeoffValue } from './takeoff-values.js';
export {
  isTakeoffQuantity,
  TAKEOFF_QUANTITIES,
  takeoffDisplayUnit,
  takeoffKind,
  takeoffSiUnit,
  type TakeoffQuantityName,
} from './takeoff-quantities.js';
