export { FeaturesModule } from './features.module.js';
export { FeaturesService } from './features.service.js';
export type { FeatureEntity } from './feature.entity.js';
export type { FeatureBody } from './features.dto.js';
