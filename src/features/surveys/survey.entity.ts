import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import type { Outline, Probes } from '../../domain/trade/index.js';
import { DateColumn, DecimalColumn } from '../../platform/database/columns.js';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';
import type { SurveyInputs } from './inputs/index.js';

/** What was measured at a feature on a day, in the units it was measured in. */
@Entity('survey')
export class SurveyEntity extends ResourceEntity {
  @Column({ name: 'feature_id', type: 'uuid' })
  featureId: string;

  @DateColumn('surveyed_on')
  surveyedOn: string;

  @Column({ type: 'jsonb' })
  outline: Outline;

  @Column({ type: 'jsonb', nullable: true })
  probes: Probes | null;

  @DecimalColumn('access_factor', 8, 4)
  accessFactor: Decimal;

  @Column({ type: 'jsonb', default: [] })
  findings: string[];

  @Column({ name: 'depth_profile', type: 'jsonb', nullable: true })
  depthProfile: SurveyInputs['depthProfile'];

  @Column({ name: 'pipe_run', type: 'jsonb', nullable: true })
  pipeRun: SurveyInputs['pipeRun'];

  @Column({ name: 'equipment_condition', type: 'jsonb', default: [] })
  equipmentCondition: SurveyInputs['equipmentCondition'];

  @Column({ name: 'reclaimed_materials', type: 'jsonb', default: [] })
  reclaimedMaterials: SurveyInputs['reclaimedMaterials'];

  @Column({ name: 'water_tests', type: 'jsonb', default: [] })
  waterTests: SurveyInputs['waterTests'];
}
