import type { BlockerBody, VisitBody } from '../../schedule/index.js';

/** Days are working days from the day the demonstration is made on: negative before it, 0 that day, positive after it. */
export interface DemoVisit extends Pick<VisitBody, 'startTime' | 'lengthMinutes' | 'bring' | 'note'> {
  readonly quote: string;
  readonly days: readonly number[];
  readonly people: readonly string[];
  /** What was said when it was called off. */
  readonly cancelledBecause?: string;
}

export interface DemoDaysOff {
  readonly person: string;
  readonly firstDay: number;
  readonly lastDay: number;
  readonly note: string;
}

export interface DemoBlocker extends Pick<BlockerBody, 'kind' | 'reference' | 'note'> {
  readonly quote: string;
  readonly requested: number;
  readonly clear: number;
  readonly cleared?: number;
  readonly validUntil?: number;
}

export const VISITS: readonly DemoVisit[] = [
  { quote: 'fish', days: [-4, -3, -2], people: ['crew-lead', 'crew'], startTime: '07:30', lengthMinutes: 510, bring: ['Holding tanks and air', 'Trash pump'], note: 'Fish first; keep them under net and shade.' },
  { quote: 'fish', days: [-1], people: ['crew-lead', 'crew'], startTime: '07:30', lengthMinutes: 510, bring: [], note: null, cancelledBecause: 'Thunderstorms all day' },
  { quote: 'fish', days: [0, 1], people: ['crew-lead', 'crew', 'crew2'], startTime: '07:30', lengthMinutes: 510, bring: ['Pump and 75 ft of 2 in pipe', 'Bulkheads, hole saw'], note: 'Circulation. The circuit at the pump stays off and locked until the electrician has been.' },
  { quote: 'fish', days: [2], people: ['crew-lead'], startTime: '09:00', lengthMinutes: 240, bring: ['Salt, dechlorinator', 'Test kit'], note: 'Start-up; fish go back only after a good reading.' },
  { quote: 'nature', days: [1], people: ['estimator'], startTime: '15:00', lengthMinutes: 60, bring: ['Marking paint'], note: 'Walk the edge with the school, and mark where digging is planned.' },
  { quote: 'nature', days: [3, 4, 5], people: ['crew2', 'crew3', 'crew4'], startTime: '07:30', lengthMinutes: 510, bring: ['Temporary fence', 'Mud pump'], note: 'Fence up before the water is open: children next door.' },
];

/** The one day falls on a visit, so that the plan shows a warning. */
export const DAYS_OFF: readonly DemoDaysOff[] = [
  { person: 'crew4', firstDay: 4, lastDay: 4, note: 'Dentist in the city' },
  { person: 'crew', firstDay: 8, lastDay: 12, note: 'Family' },
];

/** One stands in the way of the planned visits, one comes later than the work, and one is out of the way. */
export const BLOCKERS: readonly DemoBlocker[] = [
  { quote: 'nature', kind: 'utility-locate', requested: -2, clear: 2, reference: 'Ticket 55-20417', note: 'Water and cable have answered; power is still open.' },
  { quote: 'nature', kind: 'materials', requested: -3, clear: 6, reference: 'Order 1188', note: 'Sixty sedges; the nursery lifts them next week.' },
  { quote: 'fish', kind: 'permit', requested: -9, clear: -5, cleared: -5, validUntil: 20, reference: 'Permit 0719', note: 'Rinse water onto the rear lawn.' },
];
