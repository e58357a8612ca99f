import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { noSuchReference, notPossible } from '../../platform/http/problems.js';
import { type LaborRuleEntity, LaborRulesService } from '../labor-rules/index.js';
import type { AskedLabor } from './asked.js';

/** Finds the rule of each labor item: the named one, or else the one in force for its cost code. */
@Injectable()
export class LaborRulesFor {
  constructor(private readonly rules: LaborRulesService) {}

  /**
   * The items in their order, each with its rule; two queries however many items.
   * @param asOf YYYY-MM-DD, the day whose rules apply
   * @throws Problem 422 when a rule is not there, or is of another cost code
   */
  async find(actor: Actor, items: readonly AskedLabor[], asOf: string): Promise<{ item: AskedLabor; rule: LaborRuleEntity }[]> {
    const named = await this.rules.findMany(actor, items.flatMap(({ ruleId }) => ruleId?.toLowerCase() ?? []));
    const inForce = await this.rules.inForce(actor, items.flatMap(({ ruleId, costCode }) => (ruleId ? [] : [costCode])), asOf);
    return items.map((item, index) => {
      const { ruleId, costCode } = item;
      const rule = ruleId ? named.get(ruleId.toLowerCase()) : inForce.get(costCode);
      if (rule === undefined) throw ruleId ? noSuchReference(`/labor/${index}/ruleId`, 'labor rule') : noRule(costCode, asOf, index);
      if (rule.costCode === costCode) return { item, rule };
      // Hours planned for one cost code by another one's rule would spoil the comparison with the hours worked.
      throw notPossible(`The rule ${rule.name} is for ${rule.costCode}, not for ${costCode}.`, [{ pointer: `/labor/${index}/ruleId`, detail: `is a rule for ${rule.costCode}; name one for ${costCode}, or leave it out` }]);
    });
  }
}

function noRule(costCode: string, asOf: string, index: number): Error {
  return notPossible(`No labor rule for ${costCode} was in force on ${asOf}. Make one that is effective from that day or before, or name a rule.`, [
    { pointer: `/labor/${index}/costCode`, detail: `has no labor rule in force on ${asOf}; make one for it with effectiveFrom on or before that day, or name one in ruleId` },
  ]);
}
