import type { DepthPointBody } from './depth-profile.dto.js';
import type { EquipmentConditionBody } from './equipment-condition.dto.js';
import type { PipeRunBody } from './pipe-run.dto.js';
import type { ReclaimedMaterialBody } from './reclaimed-material.dto.js';
import type { WaterTestBody } from './water-test.dto.js';

/** What a survey can hold beside outline and readings, as it is stored. */
export interface SurveyInputs {
  readonly depthProfile: DepthPointBody[] | null;
  readonly pipeRun: PipeRunBody | null;
  readonly equipmentCondition: EquipmentConditionBody[];
  readonly reclaimedMaterials: ReclaimedMaterialBody[];
  readonly waterTests: WaterTestBody[];
}

/** The same as it is asked for: what is missing and what is null are both "none". */
export type AskedInputs = { readonly [K in keyof SurveyInputs]?: SurveyInputs[K] | null };
