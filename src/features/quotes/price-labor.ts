import { decimal, Decimal } from '../../domain/decimal.js';
import { laborLine, type LaborQuantity } from '../../domain/pricing/index.js';
import { takeoffSiUnit, takeoffValue, type Takeoff, type TakeoffQuantityName } from '../../domain/trade/index.js';
import type { Working } from '../../domain/working.js';
import { atPointer, invalidInput, notPossible } from '../../platform/http/problems.js';
import type { CompanyEntity } from '../companies/index.js';
import type { LaborRuleEntity } from '../labor-rules/index.js';
import type { SurveyEntity } from '../surveys/index.js';
import type { AskedLabor } from './asked.js';
import type { NewLine } from './quotes.repository.js';

/** A survey with the quantities computed from it. */
export interface SurveyTakeoff {
  readonly survey: SurveyEntity;
  readonly takeoff: Takeoff;
}

/** What a price takes of a rule: one in force, or one that is only considered. */
export type PricingRule = Pick<LaborRuleEntity, 'id' | 'version' | 'costCode' | 'name' | 'quantity' | 'unit' | 'setupHours' | 'hoursPerUnit' | 'minimumHours'>;

/**
 * @param pointer the place of the item in the request, such as /labor/0
 * @throws Problem 422 when the rule needs a takeoff, or probe readings, that are not there; 400 for a quantity that
 *   the rule does not take or that can't be priced
 */
export function priceLabor(item: AskedLabor, rule: PricingRule, measured: SurveyTakeoff | null, company: CompanyEntity, pointer: string): NewLine {
  const { quantity, takeoff } = rule.quantity === 'count' ? counted(item) : takenOff(item, rule.name, rule.quantity, measured, pointer);
  const line = atPointer(pointer, () =>
    laborLine({
      quantity,
      rule: { ...rule, id: `${rule.id} version ${rule.version}` },
      accessFactor: measured?.survey.accessFactor ?? new Decimal(1),
      hourIncrement: company.hourIncrement,
      sellRate: company.laborSellRate,
      currency: company.currency,
    }),
  );
  return {
    kind: 'labor',
    costCode: item.costCode,
    description: item.description ?? rule.name,
    quantity: decimal(line.quantityInRuleUnit ?? 0).toDecimalPlaces(6),
    unit: rule.unit,
    hours: line.hours,
    unitPrice: line.unitPrice,
    amount: line.amount,
    unitCost: null,
    cost: new Decimal(0),
    taxCategory: company.laborTaxCategory,
    ruleId: rule.id,
    partId: null,
    section: item.section ?? null,
    working: takeoff === null ? line.working : { ...line.working, takeoff },
  };
}

interface Counted {
  readonly quantity: LaborQuantity;
  readonly takeoff: Working | null;
}

function counted({ quantity }: AskedLabor): Counted {
  return { quantity: { name: 'count', value: Number(quantity ?? '1'), unit: 'each', source: 'the quote' }, takeoff: null };
}

function takenOff(item: AskedLabor, name: string, quantity: TakeoffQuantityName, measured: SurveyTakeoff | null, pointer: string): Counted {
  if (item.quantity !== null && item.quantity !== undefined) {
    throw invalidInput([{ pointer: `${pointer}/quantity`, detail: `must be left out: the rule ${name} takes its ${quantity} from the survey` }]);
  }
  if (measured === null) {
    throw notPossible(`The labor rule ${name} goes by the ${quantity} of a survey. Name a survey, or a rule that counts.`, [{ pointer: '/surveyId', detail: `is needed by the labor rule ${name}, which goes by the ${quantity}` }]);
  }
  const value = takeoffValue(measured.takeoff, quantity, takeoffSiUnit(quantity));
  if (value === null) {
    throw notPossible(`The labor rule ${name} goes by the ${quantity}, which needs probe readings, and the survey has none. Add the readings to the survey, or name another rule.`, [{ pointer, detail: `needs probe readings in the survey for the ${quantity}` }]);
  }
  const { id, version, surveyedOn } = measured.survey;
  return { quantity: { name: quantity, value: value.value, unit: value.unit, source: `survey of ${surveyedOn}, ${id} version ${version}` }, takeoff: value.working };
}
