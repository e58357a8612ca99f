import type { ListedHour } from './judge.js';
import type { Ledger, Noted } from './ledger.js';
import { dayOf } from './work-days.js';
import type { Firm } from './world.js';

/** A mutation after which hours are judged anew. */
const JUDGING = ['time-entry.log', 'time-entry.start', 'time-entry.stop', 'time-entry.correct'];

/**
 * Hours that came for a locked day or a closed job must be held, and no others. Between asking and answer nobody knows
 * in which order things happened; there, both are right.
 * @returns the ids of those that are held
 */
export function compareHeld(ledger: Ledger, hours: readonly ListedHour[], firms: readonly Firm[]): Set<string> {
  const firmOf = new Map(firms.flatMap((firm) => firm.jobs.map((job) => [job, firm])));
  const judged = judgings(ledger);
  const held = new Set<string>();
  for (const hour of hours) {
    const firm = firmOf.get(hour.jobId);
    if (hour.held) held.add(hour.id);
    if (firm !== undefined && hour.voidedAt === null) requireRightly(ledger, hour, judged.get(hour.id) ?? [], firm);
  }
  return held;
}

function judgings(ledger: Ledger): Map<string, Noted[]> {
  const byEntry = new Map<string, Noted[]>();
  for (const noted of ledger.cameTo('applied')) {
    const { id } = noted.mutation.body as { id: string };
    if (JUDGING.includes(noted.mutation.kind)) byEntry.set(id, [...(byEntry.get(id) ?? []), noted]);
  }
  return byEntry;
}

function requireRightly(ledger: Ledger, hour: ListedHour, judged: readonly Noted[], { work }: Firm): void {
  const [onJob, onDay] = [(job: string) => job === hour.jobId, (through: string) => dayOf(hour.startedAt) <= through];
  const mayBeHeld = judged.some(({ notedAt, settledAt }) => work.closedJobs.mayHaveBeen(onJob, notedAt, settledAt) || work.lockedDays.mayHaveBeen(onDay, notedAt, settledAt));
  if (hour.held && !mayBeHeld) ledger.violate(`the hours ${hour.id} are held, and neither their day nor their job was closed`);
  const [only] = judged;
  // A correction may take what held them away, and the office may have released them.
  if (hour.held || judged.length !== 1 || only === undefined || work.released.has(hour.id)) return;
  const { notedAt, settledAt } = only;
  if (work.closedJobs.surelyWas(onJob, notedAt, settledAt) || work.lockedDays.surelyWas(onDay, notedAt, settledAt)) ledger.violate(`the hours ${hour.id} count, though their day or job was closed when they came`);
}
