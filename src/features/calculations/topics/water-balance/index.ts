import type { Calculation } from '../../calculation.js';
import { BUCKET_TEST } from './bucket-test.js';
import { EVAPORATION } from './evaporation.js';
import { MAKE_UP_WATER } from './make-up-water.js';
import { PAN_EVAPORATION } from './pan-evaporation.js';
import { START_UP_WATER } from './start-up-water.js';
import { WATER_COST } from './water-cost.js';

/** Water in and out. */
export const WATER_BALANCE: readonly Calculation[] = [EVAPORATION, PAN_EVAPORATION, START_UP_WATER, MAKE_UP_WATER, WATER_COST, BUCKET_TEST];
