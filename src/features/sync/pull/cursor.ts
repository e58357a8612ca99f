import { isLocalDate, isUuid } from '../../../platform/http/fields/index.js';
import { Problem } from '../../../platform/http/problem.js';
import { invalidInput } from '../../../platform/http/problems.js';

/** A place in the journal: a row that was committed, or 0 and 0 before the first. */
export interface Position {
  readonly xid: string;
  readonly seq: string;
}

/** Rows that have still to be given before the journal is followed. */
export interface Task {
  /** `all`: at the start, what is kept whatever the job, then job after job. `fill`: a job that was gained. `drop`: one that was lost. */
  readonly what: 'all' | 'fill' | 'drop';
  /** null while no job's rows are given. */
  readonly job: string | null;
  /** The kind that is being given, or the first one after it. */
  readonly kind: string;
  /** The last id of the kind that was given. */
  readonly after: string | null;
}

/** How far a phone has come. It belongs to one person in one role, to one cluster and to one set of kinds. */
export interface Cursor {
  readonly epoch: string;
  readonly person: string;
  readonly role: string;
  readonly kinds: string;
  readonly issuedOn: string;
  readonly position: Position;
  readonly task: Task | null;
}

const LONGEST = 2_000;
const WHATS = ['all', 'fill', 'drop'];

export function encodeCursor({ epoch, person, role, kinds, issuedOn, position, task }: Cursor): string {
  return Buffer.from(JSON.stringify([epoch, person, role, kinds, issuedOn, position.xid, position.seq, ...(task === null ? [] : [task.what, task.job, task.kind, task.after])])).toString('base64url');
}

/** @throws Problem 400 for what is no cursor of ours */
export function decodeCursor(text: string): Cursor {
  const parts = text.length <= LONGEST ? parse(text) : [];
  const [epoch, person, role, kinds, issuedOn, xid, seq, what, job, kind, after] = parts;
  const good =
    (parts.length === 7 || parts.length === 11) && isCount(epoch) && isUuid(person) && typeof role === 'string' && typeof kinds === 'string' && isLocalDate(issuedOn) && isCount(xid) && isCount(seq);
  const task = parts.length === 11 && WHATS.includes(what as string) && (job === null || isUuid(job)) && typeof kind === 'string' && (after === null || isUuid(after)) ? { what: what as Task['what'], job, kind, after } : null;
  if (!good || (parts.length === 11 && task === null)) throw invalidInput([{ pointer: '/cursor', detail: 'must be the cursor of an earlier answer; leave it out to start' }]);
  return { epoch, person, role, kinds, issuedOn, position: { xid, seq }, task };
}

/** The answer to a cursor that can't be followed. */
export function cursorExpired(why: string): Problem {
  return new Problem(
    'cursor-expired',
    `${why} Start over: pull without a cursor, and when the last page has come, forget what was not in it. Keep what has not been pushed yet, and push it; nothing of it is lost.`,
  );
}

function parse(text: string): unknown[] {
  try {
    const value: unknown = JSON.parse(Buffer.from(text, 'base64url').toString('utf8'));
    return Array.isArray(value) ? value : [];
  } catch {
    return [];
  }
}

/** An unsigned number of at most 64 bits in decimal digits: too large for a number of JavaScript. */
function isCount(value: unknown): value is string {
  return typeof value === 'string' && /^\d{1,20}$/.test(value) && BigInt(value) < 2n ** 63n;
}
