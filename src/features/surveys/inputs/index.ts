export { DepthPointBody } from './depth-profile.dto.js';
export { EquipmentConditionBody } from './equipment-condition.dto.js';
export { PipeRunBody } from './pipe-run.dto.js';
export { ReclaimedMaterialBody } from './reclaimed-material.dto.js';
export type { SurveyInputs } from './survey-inputs.js';
export { toSurveyInputs } from './to-survey-inputs.js';
export { WaterTestBody } from './water-test.dto.js';
