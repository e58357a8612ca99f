export { leakRate, type BucketRun, type LeakRate, type Reading } from './bucket-test.js';
export { compareLeaks } from './leak-findings.js';
export { evaporation, type Evaporation, type EvaporationInput } from './evaporation.js';
export { makeUpWater, type MakeUpWater, type MakeUpWaterInput } from './make-up-water.js';
export { PAN_COEFFICIENT, panEvaporation, type PanEvaporation } from './pan-evaporation.js';
export { saturationPressurePa } from './saturation-pressure.js';
export { startUpWater, type StartUpWater, type StartUpWaterInput } from './start-up-water.js';
export { WATER_PRICE_BASES, waterCost, type MeteredPrice, type TruckPrice, type WaterCost, type WaterPriceBasis } from './water-cost.js';
