import { benchRoutes } from '../lists/index.js';
import type { Measurement } from '../measure.js';
import { makeScheduleWorld } from './world.js';

/** What crews and the office read of the plan, each beside its own statements asked of the database bare. */
export function benchSchedule(): Promise<Measurement[]> {
  return benchRoutes(makeScheduleWorld);
}
