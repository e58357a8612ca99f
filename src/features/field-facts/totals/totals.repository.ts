import { Injectable } from '@nestjs/common';
import type { Unit } from '../../../domain/quantity/index.js';
import type { Actor } from '../../../platform/auth/actor.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import type { HauledMaterial } from '../loads/load.entity.js';

/** A sum of figures that were entered in one unit; a unit of null is that of records without the figure. */
interface SumIn {
  readonly unit: Unit | null;
  readonly sum: number;
}

/** Loads of one material whose figures are in the same units. */
export interface LoadSums {
  readonly material: HauledMaterial;
  readonly records: number;
  readonly loads: number;
  readonly volume: SumIn;
  readonly weight: SumIn;
}

/** Depths at one feature in the same units; where there was no sediment, `sediment` is of no unit. */
export interface DepthSums {
  readonly featureId: string | null;
  readonly readings: number;
  readonly bottom: SumIn & { readonly unit: Unit; readonly greatest: number };
  readonly sediment: SumIn;
}

/** Uses of one part, or of one material by its words; `quantity` is a decimal string. */
export interface UseSums {
  readonly partId: string | null;
  readonly description: string;
  readonly unit: string;
  readonly quantity: string;
}

const LOADS = `
  SELECT material, count(*)::int AS records, sum(loads)::float8 AS loads,
         json_build_object('unit', volume ->> 'unit', 'sum', coalesce(sum((volume ->> 'value')::float8), 0)) AS volume,
         json_build_object('unit', weight ->> 'unit', 'sum', coalesce(sum((weight ->> 'value')::float8), 0)) AS weight
    FROM hauled_load WHERE company_id = $1 AND job_id = $2 AND voided_at IS NULL
   GROUP BY material, volume ->> 'unit', weight ->> 'unit' ORDER BY material`;

const DEPTHS = `
  SELECT feature_id AS "featureId", count(*)::int AS readings,
         json_build_object('unit', to_bottom ->> 'unit', 'sum', sum((to_bottom ->> 'value')::float8), 'greatest', max((to_bottom ->> 'value')::float8)) AS bottom,
         json_build_object('unit', to_sediment ->> 'unit', 'sum', coalesce(sum((to_sediment ->> 'value')::float8), 0)) AS sediment
    FROM found_depth WHERE company_id = $1 AND job_id = $2 AND voided_at IS NULL
   GROUP BY feature_id, to_bottom ->> 'unit', to_sediment ->> 'unit' ORDER BY feature_id`;

const USES = `
  SELECT part_id AS "partId", min(description) AS description, unit, trim_scale(sum(quantity))::text AS quantity
    FROM material_use WHERE company_id = $1 AND job_id = $2 AND voided_at IS NULL
   GROUP BY part_id, CASE WHEN part_id IS NULL THEN lower(description) END, unit ORDER BY min(description), unit LIMIT $3`;

/** What was taken down for a job, summed by the database: one statement each, however many records there are. */
@Injectable()
export class TotalsRepository {
  constructor(private readonly db: TenantDatabase) {}

  loads({ companyId }: Actor, jobId: string): Promise<LoadSums[]> {
    return this.db.read({ companyId }, (manager) => manager.query<LoadSums[]>(LOADS, [companyId, jobId]));
  }

  depths({ companyId }: Actor, jobId: string): Promise<DepthSums[]> {
    return this.db.read({ companyId }, (manager) => manager.query<DepthSums[]>(DEPTHS, [companyId, jobId]));
  }

  uses({ companyId }: Actor, jobId: string, limit: number): Promise<UseSums[]> {
    return this.db.read({ companyId }, (manager) => manager.query<UseSums[]>(USES, [companyId, jobId, limit]));
  }
}
