import type { BlockerDays } from '../blockers/blocked-because.js';

export interface ComingPerson {
  readonly personId: string;
  readonly name: string;
  readonly active: boolean;
  readonly onCrew: boolean;
}

/** Another visit of the same person at the same time. */
export interface Clash {
  readonly personId: string;
  readonly visitId: string;
  readonly jobNumber: string;
  /** Local to the other site. */
  readonly day: string;
  readonly startTime: string;
  readonly timeZone: string;
}

export interface Absence {
  readonly personId: string;
  readonly firstDay: string;
  readonly lastDay: string;
}

export interface OpenBlocker extends BlockerDays {
  readonly id: string;
}

/** What the database knows of the people, times and hindrances of a visit. */
export interface VisitFacts {
  /** The day on which it ends, YYYY-MM-DD at the site: the day after for a visit over midnight. */
  readonly lastDay: string;
  readonly jobState: string;
  readonly jobNumber: string;
  readonly people: readonly ComingPerson[];
  readonly clashes: readonly Clash[];
  readonly absences: readonly Absence[];
  readonly blockers: readonly OpenBlocker[];
}
