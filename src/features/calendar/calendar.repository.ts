import { Injectable } from '@nestjs/common';
import { TenantDatabase } from '../../platform/database/tenant-database.js';

/** A visit as a calendar shows it to one person. */
export interface CalendarVisit {
  readonly id: string;
  readonly version: number;
  readonly createdAt: Date;
  /** The last change of the visit, or of what is told of its job and site: a program that goes by it must not keep an old hazard. */
  readonly changedAt: Date;
  readonly startsAt: Date;
  readonly endsAt: Date;
  readonly startTime: string;
  readonly timeZone: string;
  readonly bring: readonly string[];
  readonly note: string | null;
  /** Cancelled, or the person was taken off it. */
  readonly off: boolean;
  readonly jobNumber: string;
  readonly title: string;
  readonly address: string | null;
  readonly accessNotes: string | null;
  readonly hazards: string | null;
}

interface Asked {
  readonly companyId: string;
  readonly personId: string;
  readonly since: Date;
  readonly limit: number;
}

@Injectable()
export class CalendarRepository {
  constructor(private readonly db: TenantDatabase) {}

  /**
   * The visits that a person comes to, or was to come to, and that end after a moment, soonest first; null when the
   * person does not work here any more. One statement. Of a visit that the person was taken off it tells no more than
   * whose it was: a feed goes on for years, and the next code of the gate is nobody's who does not come there.
   */
  async visitsOf({ companyId, personId, since, limit }: Asked): Promise<CalendarVisit[] | null> {
    const rows = await this.db.read({ companyId }, (manager) =>
      manager.query<(CalendarVisit & { id: string | null })[]>(
        `SELECT v.id, v.version, v.created_at AS "createdAt", greatest(v.changed_at, told.at) AS "changedAt", v.starts_at AS "startsAt", v.ends_at AS "endsAt",
                v.start_time AS "startTime", v.time_zone AS "timeZone",
                CASE WHEN v.left_at IS NULL THEN v.bring ELSE '{}' END AS bring, CASE WHEN v.left_at IS NULL THEN v.note END AS note, v.state = 'cancelled' OR v.left_at IS NOT NULL AS off,
                j.number AS "jobNumber", j.title, s.address, s.access_notes AS "accessNotes", s.hazards
         FROM person p
         LEFT JOIN LATERAL (
           SELECT v.*, c.left_at FROM visit_person c JOIN visit v ON v.company_id = c.company_id AND v.id = c.visit_id
           WHERE c.company_id = p.company_id AND c.person_id = p.id AND v.ends_at > $3
           ORDER BY v.starts_at, v.id LIMIT $4
         ) v ON true
         LEFT JOIN job j ON j.company_id = v.company_id AND j.id = v.job_id
         LEFT JOIN site s ON s.company_id = j.company_id AND s.id = j.site_id AND v.left_at IS NULL
         LEFT JOIN LATERAL (
           SELECT max(h.occurred_at) AS at FROM history h
           WHERE h.company_id = j.company_id AND h.operation = 'update'
             AND (h.entity = 'job' AND h.entity_id = j.id AND h.columns && '{number,title,site_id}' OR h.entity = 'site' AND h.entity_id = s.id AND h.columns && '{address,access_notes,hazards}')
         ) told ON true
         WHERE p.company_id = $1 AND p.id = $2 AND p.active
         ORDER BY v.starts_at, v.id`,
        [companyId, personId, since, limit],
      ),
    );
    // A person without visits still has one row, which tells them from one who left.
    return rows.length === 0 ? null : rows.filter(({ id }) => id !== null);
  }
}
