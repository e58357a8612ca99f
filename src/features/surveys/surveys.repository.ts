import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { type Page, pageOf } from '../../platform/http/lists.js';
import { ResourceStore } from '../../platform/resources/resource-store.js';
import { SurveyEntity } from './survey.entity.js';
import type { SurveyListQuery, SurveySummary } from './surveys.dto.js';

type SummaryRow = Omit<SurveySummary, 'createdAt'> & { readonly createdAt: Date };

const SUMMARIES = `
  SELECT id, feature_id AS "featureId", surveyed_on AS "surveyedOn", trim_scale(access_factor)::text AS "accessFactor",
         created_at AS "createdAt", outline ->> 'shape' AS "outlineShape",
         coalesce(jsonb_array_length(probes -> 'readings'), 0) AS "readingCount", jsonb_array_length(findings) AS "findingCount"
    FROM survey
   WHERE company_id = $1 AND ($2::uuid IS NULL OR feature_id = $2) AND ($3::uuid IS NULL OR id < $3)
   ORDER BY id DESC LIMIT $4`;

@Injectable()
export class SurveysRepository extends ResourceStore<SurveyEntity> {
  constructor(private readonly database: TenantDatabase) {
    super(database, SurveyEntity, 'survey');
  }

  /** Whether a survey names the piece of equipment. Its list is kept as it was entered, so ids are compared in lower case. */
  async nameEquipment(actor: Actor, equipmentId: string): Promise<boolean> {
    const [row] = await this.database.read(actor, (manager) =>
      manager.query<{ named: boolean }[]>(
        `SELECT EXISTS (SELECT FROM survey s, jsonb_array_elements(s.equipment_condition) AS e WHERE s.company_id = $1 AND lower(e ->> 'equipmentId') = $2) AS named`,
        [actor.companyId, equipmentId.toLowerCase()],
      ),
    );
    return row?.named === true;
  }

  /** The readings are counted by the database: two hundred surveys of five thousand would be 60 MB to fetch and parse. */
  async summaries(actor: Actor, query: SurveyListQuery): Promise<Page<SurveySummary>> {
    const rows = await this.database.read(actor, (manager) =>
      manager.query<SummaryRow[]>(SUMMARIES, [actor.companyId, query.featureId ?? null, query.cursor ?? null, query.limit + 1]),
    );
    return pageOf(rows.map((row) => ({ ...row, createdAt: row.createdAt.toISOString() })), query.limit);
  }
}
