import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import type { HeldReason } from '../held/held-because.js';
import { TimeEntriesService } from '../time-entries.service.js';
import type { StoredBreak, TimeKind } from '../time-entry.entity.js';
import type { TimeEntryVersionView } from './versions.dto.js';

const MOST_VERSIONS = 200;

/** A row as the journal writes it. */
interface Stood {
  readonly version: number;
  readonly created_at: string;
  readonly recorded_by: string;
  readonly changed_at: string | null;
  readonly change_reason: string | null;
  readonly job_id: string;
  readonly person_id: string;
  readonly cost_code: string;
  readonly started_at: string;
  readonly ended_at: string | null;
  readonly kind: TimeKind;
  readonly unpaid_break_minutes: number;
  readonly breaks: StoredBreak[];
  readonly note: string | null;
  readonly held: boolean;
  readonly held_because: HeldReason[];
  readonly approved_at: string | null;
  readonly voided_at: string | null;
}

interface Change {
  readonly before: Partial<Stood>;
  readonly occurred_at: string;
  readonly actor_id: string | null;
}

/** Every version of an entry, taken back from the present one through the journal: no second copy that could differ. */
@Injectable()
export class EntryVersions {
  constructor(
    private readonly db: TenantDatabase,
    private readonly entries: TimeEntriesService,
  ) {}

  /** Newest first. @throws Problem 404, for crew also for hours of somebody else */
  async of(actor: Actor, id: string): Promise<TimeEntryVersionView[]> {
    await this.entries.find(actor, id);
    // One statement, so that no change comes between the row and its journal. Changes of one row follow each other by
    // seq, even when the transaction of the later one began first.
    const [now] = await this.db.read(actor, (manager) =>
      manager.query<{ row: Stood; changes: Change[] }[]>(
        `SELECT to_jsonb(t) AS row, coalesce((
           SELECT jsonb_agg(jsonb_build_object('before', c.before, 'occurred_at', c.occurred_at, 'actor_id', c.actor_id) ORDER BY c.seq DESC)
           FROM (SELECT * FROM history WHERE company_id = $1 AND entity = 'time_entry' AND entity_id = $2 AND operation = 'update'
                 ORDER BY seq DESC LIMIT ${MOST_VERSIONS}) AS c), '[]') AS changes
         FROM time_entry AS t WHERE t.company_id = $1 AND t.id = $2`,
        [actor.companyId, id],
      ),
    );
    return now === undefined ? [] : takenBack(now.row, now.changes);
  }
}

function takenBack(present: Stood, changes: readonly Change[]): TimeEntryVersionView[] {
  const versions: TimeEntryVersionView[] = [];
  let stood = present;
  for (const change of changes) {
    versions.push(toView(stood, present.version - versions.length, { at: stood.changed_at ?? change.occurred_at, by: change.actor_id }));
    stood = { ...stood, ...change.before };
  }
  if (changes.length < MOST_VERSIONS) versions.push(toView(stood, present.version - versions.length, { at: stood.created_at, by: stood.recorded_by }));
  return versions;
}

function toView(stood: Stood, version: number, changed: { at: string; by: string | null }): TimeEntryVersionView {
  const instant = (text: string): string => new Date(text).toISOString();
  const instantOrNull = (text: string | null): string | null => (text === null ? null : instant(text));
  return {
    version, changedAt: instant(changed.at), changedBy: changed.by, reason: stood.change_reason,
    jobId: stood.job_id, personId: stood.person_id, costCode: stood.cost_code,
    startedAt: instant(stood.started_at), endedAt: instantOrNull(stood.ended_at), kind: stood.kind,
    unpaidBreakMinutes: stood.unpaid_break_minutes, breaks: stood.breaks, note: stood.note,
    held: stood.held, heldBecause: reasonsOf(stood), approvedAt: instantOrNull(stood.approved_at), voidedAt: instantOrNull(stood.voided_at),
  };
}

/** Older changes in the journal say only that an entry was held: at that time a locked day was the one reason. */
function reasonsOf({ held, held_because: because }: Stood): HeldReason[] {
  return held && because.length === 0 ? ['day-locked'] : because;
}
