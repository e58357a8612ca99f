export { PartsModule } from './parts.module.js';
export { MOST_OF_A_KIND, PartsService } from './parts.service.js';
export type { PartEntity } from './part.entity.js';
export type { PartKind } from './attributes/index.js';
export type { PartBody } from './parts.dto.js';
