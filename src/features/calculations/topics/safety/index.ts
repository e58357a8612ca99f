import type { Calculation } from '../../calculation.js';
import { BARRIER_CAUTIONS } from './barrier-cautions.js';
import { DISCHARGE_CAUTIONS } from './discharge-cautions.js';
import { ELECTRICAL_CAUTIONS } from './electrical-cautions.js';
import { LIFTING } from './lifting.js';
import { TRENCH_CAUTIONS } from './trench-cautions.js';
import { WATER_SUPPLY_CAUTIONS } from './water-supply-cautions.js';

/** Cautions, never permissions. */
export const SAFETY: readonly Calculation[] = [LIFTING, TRENCH_CAUTIONS, BARRIER_CAUTIONS, ELECTRICAL_CAUTIONS, DISCHARGE_CAUTIONS, WATER_SUPPLY_CAUTIONS];
