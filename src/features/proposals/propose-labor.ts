import type { LaborRuleEntity } from '../labor-rules/index.js';
import type { SurveyEntity } from '../surveys/index.js';
import type { ProposedLaborView } from './proposals.dto.js';
import { type Scope, WORK_OF } from './scopes.js';

export interface ProposedLabor {
  readonly labor: ProposedLaborView[];
  readonly warnings: string[];
}

const READY: Readonly<Record<string, string>> = { stone: 'Clean and set again the reclaimed stone', plants: 'Divide and repot the reclaimed plants', driftwood: 'Clean and place again the reclaimed driftwood' };

/** The hours of a scope, and of the material on the site that is used again: labor, and nothing to buy. */
export function proposeLabor(scope: Scope, costCode: string, rule: LaborRuleEntity | undefined, survey: SurveyEntity, reuse: ReadonlyMap<string, LaborRuleEntity>): ProposedLabor {
  const labor: ProposedLaborView[] = [];
  const warnings: string[] = [];
  if (rule === undefined) warnings.push(`No labor rule for the cost code ${costCode} is in force on ${survey.surveyedOn}. Make one with POST /v1/labor-rules, or name another cost code for ${scope}.`);
  else labor.push({ costCode, ruleId: rule.id, description: rule.name });
  const kind = WORK_OF[scope].reclaims;
  const items = survey.reclaimedMaterials.filter((item) => item.kind === kind);
  if (kind === null || items.length === 0) return { labor, warnings };
  const again = reuse.get(RECLAIM_CODE) ?? rule;
  const amounts = items.map(({ quantity }) => `${quantity.value} ${quantity.unit}`).join(' + ');
  const description = `${READY[kind] ?? 'Use again'}: ${amounts}`;
  if (again === undefined) warnings.push(`${description}: no labor rule for the cost code ${RECLAIM_CODE} or ${costCode} is in force.`);
  else labor.push({ costCode: again.costCode, ruleId: again.id, description });
  if (again !== undefined && again.id === rule?.id) warnings.push(`${description}: there is no rule for the cost code ${RECLAIM_CODE}, so the hours of ${costCode} are suggested once more; leave them out if they cover it.`);
  return { labor, warnings };
}

/** Hours for what is used again have a cost code of their own where the company has made a rule for it. */
export const RECLAIM_CODE = 'reclaim';
