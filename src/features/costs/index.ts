export { CostsModule } from './costs.module.js';
export { CostsService } from './costs.service.js';
export type { SpentByKind } from './costs.repository.js';
export type { CostBody } from './costs.dto.js';
