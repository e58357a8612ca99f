import { type Break, isShortRest } from '../../domain/worktime/index.js';
import type { StoredBreak } from './time-entry.entity.js';
import { toBreaks } from './worked-time.js';

/** Which rows count as worked: not those that are void, still run or are held. @param entry what the table is called */
export function countsAsWork(entry: string): string {
  return `${entry}.voided_at IS NULL AND ${entry}.ended_at IS NOT NULL AND NOT ${entry}.held`;
}

/** Breaks that do not count as worked. */
export function unpaidPauses(breaks: readonly StoredBreak[]): Break[] {
  return toBreaks(breaks).filter((pause) => !pause.paid && !isShortRest(pause));
}
