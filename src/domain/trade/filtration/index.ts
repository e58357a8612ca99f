export { ammoniaFromFeed, NITROGEN_PER_PROTEIN, PER_GRAM_NITRIFIED } from './ammonia-from-feed.js';
export { biologicalFilter, GARDEN_POND_RATES, type BiologicalFilter, type BiologicalFilterInput } from './biological-filter.js';
export { checkFlowLimits, FLOW_FITS, type FlowCheck, type FlowFit, type FlowLimited } from './flow-limits.js';
export { netWaterM3, type WaterParts } from './net-volume.js';
export { doserSetting, USUAL_RESERVOIR_WEEKS, type DoserInput, type DoserSetting } from './doser.js';
