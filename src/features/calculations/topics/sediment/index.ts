import type { Calculation } from '../../calculation.js';
import { DEWATERING } from './dewatering.js';
import { HAUL_CYCLE } from './haul-cycle.js';
import { ORGANIC_MUD } from './organic-mud.js';
import { SEDIMENT_BY_PLACE } from './sediment-by-place.js';
import { SEDIMENT_WEIGHT } from './sediment-weight.js';
import { TRUCK_LOADS } from './truck-loads.js';

/** How much sediment there is, what it weighs, and what it takes to get it away. */
export const SEDIMENT_AND_HAUL: readonly Calculation[] = [SEDIMENT_BY_PLACE, SEDIMENT_WEIGHT, ORGANIC_MUD, DEWATERING, TRUCK_LOADS, HAUL_CYCLE];
