import type { Calculation } from '../calculation.js';
import { BOULDER_WEIGHT } from './boulder-weight.js';

/** Every calculation that the API serves, in the order of the list. */
export const CALCULATIONS: readonly Calculation[] = [BOULDER_WEIGHT];
