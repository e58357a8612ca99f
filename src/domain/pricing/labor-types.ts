import type { Decimal } from '../decimal.js';
import type { Unit } from '../quantity/index.js';
import type { Working } from '../working.js';

export interface LaborQuantity {
  readonly name: string;
  readonly value: number;
  /** Any unit of the rule's kind; a takeoff gives SI. */
  readonly unit: Unit;
  /** Where the value comes from, for the working. */
  readonly source?: string;
}

export interface LaborRule {
  /** Identity of the rule's very version, kept in the working. */
  readonly id: string;
  readonly name: string;
  readonly costCode: string;
  /** Unit of the quantity that `hoursPerUnit` counts; null for a rule of setup and minimum hours alone. */
  readonly unit: Unit | null;
  readonly setupHours: Decimal;
  readonly hoursPerUnit: Decimal;
  readonly minimumHours: Decimal;
}

export interface LaborLineInput {
  readonly quantity: LaborQuantity | null;
  readonly rule: LaborRule;
  readonly accessFactor: Decimal;
  readonly hourIncrement: Decimal;
  /** Price of an hour; may have more decimals than the minor unit. */
  readonly sellRate: Decimal;
  readonly currency: string;
}

export interface LaborLine {
  readonly hours: Decimal;
  /** The sell rate, unrounded. */
  readonly unitPrice: Decimal;
  readonly amount: Decimal;
  readonly quantityInRuleUnit: number | null;
  readonly working: Working;
}
