import type { Said } from './ledger.js';

/** The body of hours, as far as the simulation uses it. */
export interface HourBody {
  readonly id: string;
  readonly jobId: string;
  readonly personId: string;
  readonly costCode: string;
  readonly startedAt: string;
  /** Missing while they run. */
  readonly endedAt?: string;
  readonly unpaidBreakMinutes?: number;
}

/** A row as it ought to be. */
export interface ModelRow {
  readonly entity: string;
  readonly revision: number;
  readonly voided: boolean;
  readonly body: { readonly id: string; readonly jobId: string } & Readonly<Record<string, unknown>>;
}

export type Verdict = 'applied' | 'conflict' | 'rejected';

/** A kind is the row's, and what is done to it: `time-entry.correct`. */
const MAKING = ['log', 'start', 'record', 'add'];

/**
 * What the service ought to be, without any of its troubles: one mutation after the other, by one hand, in memory. The
 * service is right when some order of everything that it says it applied leads here.
 */
export class SequentialModel {
  readonly rows = new Map<string, ModelRow>();

  apply({ kind, body: given, baseRevision }: Said): Verdict {
    const [entity = '', verb = ''] = kind.split('.');
    const body = given as ModelRow['body'];
    const row = this.rows.get(body.id);
    if (MAKING.includes(verb)) {
      if (row !== undefined) return 'rejected';
      this.rows.set(body.id, { entity, revision: 1, voided: false, body });
      return 'applied';
    }
    if (row === undefined) return 'rejected';
    // What is void stays so: voiding it again, on whatever revision, finds its wish fulfilled.
    if (verb === 'void' && row.voided) return 'applied';
    if (verb !== 'stop' && row.revision !== baseRevision) return 'conflict';
    // Only hours that run can be stopped, and nobody ever makes ended ones run again.
    if (row.voided || (verb === 'stop' && row.body['endedAt'] !== undefined)) return 'rejected';
    this.rows.set(body.id, { ...row, revision: row.revision + 1, ...(verb === 'void' ? { voided: true } : { body: { ...row.body, ...body } }) });
    return 'applied';
  }

  /** The office did something to the row that changes none of what is looked at here. @returns whether that made this revision */
  touch(id: string, revision: number): boolean {
    const row = this.rows.get(id);
    if (row === undefined || row.revision + 1 !== revision) return false;
    this.rows.set(id, { ...row, revision });
    return true;
  }

  of(entity: string): ModelRow[] {
    return [...this.rows.values()].filter((row) => row.entity === entity);
  }

  /** Paid minutes by person, job and cost code, of hours that ended and are not void. @param held entries to leave out */
  minutes(held: ReadonlySet<string> = new Set()): Map<string, number> {
    const sums = new Map<string, number>();
    for (const { body, voided } of this.of('time-entry')) {
      const hour = body as unknown as HourBody;
      if (voided || hour.endedAt === undefined || held.has(hour.id)) continue;
      const key = [hour.personId, hour.jobId, hour.costCode].join(' ');
      const minutes = (Date.parse(hour.endedAt) - Date.parse(hour.startedAt)) / 60_000 - (hour.unpaidBreakMinutes ?? 0);
      sums.set(key, (sums.get(key) ?? 0) + minutes);
    }
    return sums;
  }
}
