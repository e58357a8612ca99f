import { Decimal, sumDecimals } from '../../domain/decimal.js';
import { Problem } from '../../platform/http/problem.js';
import type { CompanyEntity } from '../companies/index.js';
import type { LaborRuleEntity } from '../labor-rules/index.js';
import { priceLabor, type PricingRule, type SurveyTakeoff } from '../quotes/index.js';
import type { ProposedLaborView } from './labor.views.js';
import type { ProposedChoiceView } from './proposals.dto.js';
import { reclaimedFor } from './reclaimed-labor.js';
import type { Scope } from './scopes.js';

/** Hours for what is used again have a cost code of their own where the company has made a rule for it. */
export const RECLAIM_CODE = 'reclaim';

/** Scopes whose rule, when it counts, counts the pieces that are bought; elsewhere it counts the work once. */
const BY_THE_PIECE: readonly Scope[] = ['skimmer', 'filter', 'doser', 'plants', 'fish'];

/** The most pieces that a quote takes in one line. */
const MOST_PIECES = 1_000_000;

/** What the hours of every scope are computed from. */
export interface LaborSetting {
  readonly measured: SurveyTakeoff;
  readonly company: CompanyEntity;
  /** The rules in force on the survey's date, by cost code. */
  readonly rules: ReadonlyMap<string, LaborRuleEntity>;
}

export interface ProposedLabor {
  readonly labor: ProposedLaborView[];
  readonly warnings: string[];
}

/** The hours of a scope, and of the material on the site that is used again: labor, and nothing to buy. */
export function proposeLabor(scope: Scope, costCode: string, choices: readonly ProposedChoiceView[], setting: LaborSetting): ProposedLabor {
  const { survey } = setting.measured;
  const [labor, warnings]: [ProposedLaborView[], string[]] = [[], []];
  const add = (rule: LaborRuleEntity, description: string, pieces: Decimal | null): void => {
    const item = withHours(rule, description, pieces, setting);
    if (typeof item === 'string') warnings.push(`${description}: ${item}`);
    labor.push(typeof item === 'string' ? { costCode: rule.costCode, ruleId: rule.id, description, quantity: null, hours: null, working: null } : item);
  };
  const rule = setting.rules.get(costCode);
  if (rule === undefined) warnings.push(`No labor rule for the cost code ${costCode} is in force on ${survey.surveyedOn}. Make one with POST /v1/labor-rules, or name another cost code for ${scope}.`);
  else add(rule, rule.name, BY_THE_PIECE.includes(scope) ? bought(choices) : null);
  const reclaimed = reclaimedFor(scope, survey);
  if (reclaimed === null) return { labor, warnings };
  const { description, pieces } = reclaimed;
  const again = setting.rules.get(RECLAIM_CODE) ?? rule;
  if (again === undefined) {
    warnings.push(`${description}: no labor rule for the cost code ${RECLAIM_CODE} or ${costCode} is in force.`);
    return { labor, warnings };
  }
  add(again, description, pieces);
  if (again.quantity === 'count' && pieces === null) warnings.push(`${description}: the rule ${again.name} counts pieces, and these were weighed or heaped, so it is applied once; give the number in the quote.`);
  if (again === rule) warnings.push(`${description}: there is no rule for the cost code ${RECLAIM_CODE}, so the rule of ${costCode} is suggested once more; leave one out if it covers both.`);
  return { labor, warnings };
}

/** The item with its hours by the formula that prices quotes; or why that rule can not be applied here. */
function withHours(rule: PricingRule, description: string, pieces: Decimal | null, { measured, company }: LaborSetting): ProposedLaborView | string {
  const quantity = rule.quantity === 'count' ? (pieces ?? new Decimal(1)) : null;
  if (quantity?.gt(MOST_PIECES) === true) return `${quantity.toFixed()} pieces are more than a line of a quote takes.`;
  const item = { costCode: rule.costCode, ruleId: rule.id, description, quantity: quantity?.toDecimalPlaces(4).toFixed() ?? null };
  try {
    const { hours, working } = priceLabor(item, rule, measured, company, '');
    return { ...item, hours: hours?.toFixed() ?? null, working };
  } catch (error) {
    // A warning stands beside the work; a place in a request that nobody has sent would only confuse.
    if (error instanceof Problem) return error.code === 'invalid-input' ? error.errors.map(({ detail }) => detail).join(' ') : error.detail;
    throw error;
  }
}

/** The hours that a quote would plan by the rule; null when it can not be applied to the survey. */
export function hoursBy(rule: PricingRule, setting: LaborSetting): string | null {
  const item = withHours(rule, rule.name, null, setting);
  return typeof item === 'string' ? null : item.hours;
}

/** How many pieces the choices buy; null when none. */
function bought(choices: readonly ProposedChoiceView[]): Decimal | null {
  const pieces = sumDecimals(choices.flatMap(({ suggested }) => (suggested?.unit === 'each' ? [new Decimal(suggested.quantity)] : [])));
  return pieces.isZero() ? null : pieces;
}

/** The hours of some items together, leaving out those that have none. */
export function hoursOf(labor: readonly ProposedLaborView[]): string {
  return sumDecimals(labor.flatMap(({ hours }) => (hours === null ? [] : [new Decimal(hours)]))).toFixed();
}
