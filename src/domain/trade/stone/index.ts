export { boulderWeight, STONE_FORMS, type BoulderWeight, type StoneForm } from './boulder-weight.js';
export { gravelBed, type GravelBed, type GravelBedInput } from './gravel-bed.js';
export { netWater, type Fill, type NetWater } from './net-water.js';
export { reclaimedStone, type ReclaimedStone, type StonePile } from './reclaimed-stone.js';
export { stoneEdge, type StoneEdge, type StoneEdgeInput } from './stone-edge.js';
export { USUAL_EDGE } from './usual-edge.js';
