import type { Calculation } from '../../calculation.js';
import { GRAVEL_BED } from './gravel-bed.js';
import { NET_WATER } from './net-water.js';
import { RECLAIMED_STONE } from './reclaimed-stone.js';
import { STONE_EDGE } from './stone-edge.js';

/** Stone and gravel, bought and reclaimed, and the water that they displace. */
export const STONE_AND_GRAVEL: readonly Calculation[] = [STONE_EDGE, GRAVEL_BED, RECLAIMED_STONE, NET_WATER];
