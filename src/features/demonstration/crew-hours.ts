/** Hours that somebody logged in one go, in the zone of the demonstration. */
export interface Stint {
  readonly person: string;
  /** Working days before the day the demonstration is made on. */
  readonly daysAgo: number;
  readonly costCode: string;
  /** HH:MM */
  readonly start: string;
  readonly end: string;
  readonly unpaidBreakMinutes: number;
}

export interface CrewWork {
  readonly people: readonly string[];
  /** What is to be done, in order, in quarters of an hour. */
  readonly quarters: readonly { readonly costCode: string; readonly quarters: number }[];
  readonly startedDaysAgo: number;
  /** The crew stops after so many days though it is not done. */
  readonly atMostDays: number;
}

/** 07:30 to 16:00 with half an hour at noon that is not paid. */
const DAY_STARTS = 7 * 60 + 30;
const DAY_QUARTERS = 32;
const NOON = 18;
const BREAK_MINUTES = 30;
export const DAY_ENDS = '16:00';

/** Spreads work over a crew's days: everybody takes up what comes next, and one drives there first. */
export function crewHours({ people, quarters, startedDaysAgo, atMostDays }: CrewWork): Stint[] {
  const left = quarters.map((each) => ({ ...each })).filter((each) => each.quarters > 0);
  const stints: Stint[] = [];
  for (let day = 0; day < atMostDays && left.length > 0; day++) {
    const daysAgo = startedDaysAgo - day;
    stints.push({ person: people[0] ?? '', daysAgo, costCode: 'travel', start: clockTime(DAY_STARTS - 30), end: clockTime(DAY_STARTS), unpaidBreakMinutes: 0 });
    for (const person of people) {
      for (let from = 0; from < DAY_QUARTERS && left[0] !== undefined; ) {
        const taken = Math.min(left[0].quarters, DAY_QUARTERS - from);
        stints.push({ person, daysAgo, costCode: left[0].costCode, ...times(from, from + taken) });
        from += taken;
        left[0].quarters -= taken;
        if (left[0].quarters === 0) left.shift();
      }
    }
  }
  return stints;
}

/**
 * @param from quarters that the person had worked that day before
 * @param to quarters that the person had worked when it was done
 */
function times(from: number, to: number): Pick<Stint, 'start' | 'end' | 'unpaidBreakMinutes'> {
  const pause = (quarter: number, after: boolean): number => (quarter > NOON || (after && quarter === NOON) ? BREAK_MINUTES : 0);
  const start = DAY_STARTS + from * 15 + pause(from, true);
  const end = DAY_STARTS + to * 15 + pause(to, false);
  return { start: clockTime(start), end: clockTime(end), unpaidBreakMinutes: end - start - (to - from) * 15 };
}

function clockTime(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}
