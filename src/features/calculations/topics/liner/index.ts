import type { Calculation } from '../../calculation.js';
import { LINER_CUT } from './liner-cut.js';
import { LINER_SHEET } from './liner-sheet.js';

/** Liner and underlayment. */
export const LINER: readonly Calculation[] = [LINER_SHEET, LINER_CUT];
