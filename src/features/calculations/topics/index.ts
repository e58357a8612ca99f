import type { Calculation } from '../calculation.js';
import { BOULDER_WEIGHT } from './boulder-weight.js';
import { SEDIMENT_AND_HAUL } from './sediment/index.js';
import { SITE_WORK } from './site-work.js';
import { WATER_CARE } from './water-care.js';
import { MOVING_WATER } from './moving-water.js';

/** Every calculation that the API serves, in the order of the list. */
export const CALCULATIONS: readonly Calculation[] = [...SEDIMENT_AND_HAUL, BOULDER_WEIGHT, ...SITE_WORK, ...WATER_CARE, ...MOVING_WATER];
