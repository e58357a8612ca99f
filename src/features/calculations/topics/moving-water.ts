import type { Calculation } from '../calculation.js';
import { CIRCULATION_LOOP } from './hydraulics/circulation-loop.js';
import { PUMP_RANKING } from './hydraulics/pump-ranking.js';
import { SHORT_CIRCUITING } from './hydraulics/short-circuiting.js';
import { STREAM_FLOW } from './stream/stream-flow.js';
import { WATERFALL } from './weir/waterfall.js';
import { WEIR_FLOW } from './weir/weir-flow.js';

/** The calculations about water that moves: pipes, pumps, weirs, waterfalls and streams. */
export const MOVING_WATER: readonly Calculation[] = [CIRCULATION_LOOP, PUMP_RANKING, SHORT_CIRCUITING, WATERFALL, STREAM_FLOW, WEIR_FLOW];
