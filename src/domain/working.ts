/** What went in: a measured, entered or computed value by name. */
export interface WorkingValue {
  name: string;
  value: string;
  unit?: string;
  /** Where the value comes from, such as a rule's version. */
  source?: string;
}

/** One line of arithmetic and its result. */
export interface WorkingStep {
  label: string;
  expression: string;
  value: string;
  unit?: string;
}

/**
 * How a figure came about. Strings only, values in full precision: it is stored as JSON with a priced line and must
 * give the same digits back years later, to anyone with a pocket calculator.
 */
export interface Working {
  /** The rule applied, in words. */
  rule: string;
  inputs: WorkingValue[];
  steps: WorkingStep[];
}
