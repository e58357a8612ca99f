import { isShortRest, SHORTEST_UNPAID_REST_MINUTES } from '../../domain/worktime/index.js';
import { MOST_CLOCK_SKEW_SECONDS, skewInWords } from '../../platform/clock/device-time.js';
import type { HeldReason } from './held/held-because.js';
import type { TimeEntryEntity } from './time-entry.entity.js';
import { toBreaks } from './worked-time.js';

type Judged = Pick<TimeEntryEntity, 'clockSkewSeconds' | 'breaks' | 'unpaidBreakMinutes' | 'held' | 'heldBecause'>;

const HELD: Record<HeldReason, string> = {
  'day-locked': 'the day was locked',
  'job-finished': 'the job was finished',
  'job-cancelled': 'the job was cancelled',
  'person-inactive': 'the person was not active any more',
};

/** What somebody should look at before these hours are paid. */
export function entryWarnings(entry: Judged): string[] {
  return [...clockWarning(entry), ...restWarnings(entry), ...heldWarning(entry)];
}

function heldWarning({ held, heldBecause }: Judged): string[] {
  if (!held) return [];
  const why = heldBecause.map((reason) => HELD[reason]).join(' and ');
  return [`When these hours came in, ${why}. They count for nothing until the office releases them.`];
}

function clockWarning({ clockSkewSeconds }: Judged): string[] {
  if (clockSkewSeconds === null || clockSkewSeconds.abs().lte(MOST_CLOCK_SKEW_SECONDS)) return [];
  const way = clockSkewSeconds.gt(0) ? 'fast' : 'slow';
  return [`The clock of the device was ${skewInWords(clockSkewSeconds.toNumber())} ${way}. Check the start and the end, and set the clock.`];
}

/** @see 29 CFR 785.18: rests of 5 to about 20 minutes are hours worked. */
function restWarnings({ breaks, unpaidBreakMinutes }: Judged): string[] {
  const short = toBreaks(breaks).filter(isShortRest).length;
  const few = unpaidBreakMinutes > 0 && unpaidBreakMinutes < SHORTEST_UNPAID_REST_MINUTES;
  return [
    ...(short > 0 ? [`${short === 1 ? 'An unpaid rest is' : `${short} unpaid rests are`} under ${SHORTEST_UNPAID_REST_MINUTES} minutes and counted as work (29 CFR 785.18).`] : []),
    ...(few ? [`An unpaid break of ${unpaidBreakMinutes} minutes is deducted; a rest under ${SHORTEST_UNPAID_REST_MINUTES} minutes is ordinarily work (29 CFR 785.18). Check it.`] : []),
  ];
}
