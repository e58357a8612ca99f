export { LaborRulesModule } from './labor-rules.module.js';
export { LaborRulesService } from './labor-rules.service.js';
export type { LaborRuleEntity } from './labor-rule.entity.js';
export { LaborRuleBody } from './labor-rules.dto.js';
