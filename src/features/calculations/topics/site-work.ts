import type { Calculation } from '../calculation.js';
import { LINER } from './liner/index.js';
import { SECTION_VOLUME } from './section-volume.js';
import { SAFETY } from './safety/index.js';
import { STONE_AND_GRAVEL } from './stone/index.js';
import { WATER_BALANCE } from './water-balance/index.js';

/** What is built and filled on the site, and what to be careful about there. */
export const SITE_WORK: readonly Calculation[] = [SECTION_VOLUME, ...LINER, ...STONE_AND_GRAVEL, ...WATER_BALANCE, ...SAFETY];
