export { SurveysModule } from './surveys.module.js';
export { SurveysService } from './surveys.service.js';
export type { SurveyEntity } from './survey.entity.js';
export type { SurveyBody } from './surveys.dto.js';
export { OUTLINE_SCHEMA, PROBES_SCHEMA } from './outline.schema.js';
export { greatestDepthM, reclaimedStoneKg, suctionToDischargeM } from './site-figures.js';
export { WaterTestBody } from './inputs/index.js';
