import { Injectable } from '@nestjs/common';
import type { Actor, Role } from '../auth/actor.js';

/** What the sync needs of every row. */
export interface SyncedRow {
  readonly id: string;
  readonly version: number;
}

export interface BelongsToJobs {
  /** SQL for the inside of `IN (…)`. */
  readonly jobs: string;
  /**
   * The same from the other end: a condition on `t` by which an index finds the rows of one job. Needed where `jobs` is
   * a `SELECT`, which would be run for every row of the company.
   * @param job the parameter with the job's id, such as `$5`
   */
  readonly rowsOf?: (job: string) => string;
}

/** Something that phones keep a copy of. */
export interface SyncedKind<E extends SyncedRow = SyncedRow> {
  /** As the phone calls it: `time-entry`. */
  readonly kind: string;
  /** The table, as the journal calls it. Whatever the view shows of other tables must change a column of this one too, if only `version`, or phones never hear of it. */
  readonly table: string;
  readonly entity: new () => E;
  /** `company`: everybody keeps it. Else the jobs of the row `t` as SQL for the inside of `IN (…)`: `t.job_id`, or a `SELECT` without parentheses; those on the crew of one of them keep it. */
  readonly belongsTo: 'company' | BelongsToJobs;
  /** A column that always has a person: they keep the row whatever its job. The roles in `only` keep no rows but their own. */
  readonly own?: { readonly column: string; readonly only: readonly Role[] };
  /** The rows as phones see them, in their order; without prices, costs and wages. One statement more at most, whatever their number. */
  view(actor: Actor, rows: readonly E[]): Promise<readonly object[]> | readonly object[];
}

/** What phones pull. Each slice adds its own when it starts. */
@Injectable()
export class SyncedKinds {
  private readonly kinds: SyncedKind[] = [];

  add<E extends SyncedRow>(kind: SyncedKind<E>): void {
    if (this.kinds.some((other) => other.kind === kind.kind || other.table === kind.table)) throw new Error(`There are two synced kinds ${kind.kind}.`);
    this.kinds.push(kind);
  }

  /** In the order of their names, so that a cursor means the same after a restart. */
  all(): readonly SyncedKind[] {
    return this.kinds.toSorted((a, b) => (a.kind < b.kind ? -1 : 1));
  }
}
