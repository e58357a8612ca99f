import { plain, type Decimal } from '../decimal.js';
import type { Working, WorkingStep, WorkingValue } from '../working.js';
import type { LaborLineInput } from './labor-types.js';

interface LaborFigures {
  readonly quantity: string | null;
  readonly byQuantity: Decimal;
  readonly before: Decimal;
  readonly exact: Decimal;
  readonly hours: Decimal;
  readonly amount: Decimal;
}

/** The steps of a labor line, every figure as it entered the next one. */
export function laborWorking(input: LaborLineInput, figures: LaborFigures): Working {
  const { rule, quantity, accessFactor, hourIncrement, sellRate, currency } = input;
  const { byQuantity, before, exact, hours, amount } = figures;
  const hoursStep = (label: string, expression: string, value: Decimal): WorkingStep => {
    return { label, expression, value: plain(value), unit: 'h' };
  };
  const perUnit = figures.quantity === null ? '' : ` + ${plain(rule.hoursPerUnit)} × ${figures.quantity}`;
  return {
    rule:
      'Hours = max(minimum, setup + hours per unit × quantity) × access factor, rounded up to the increment; ' +
      'amount = hours × sell rate, rounded half up',
    inputs: [...quantityInputs(input), ...ruleInputs(input)],
    steps: [
      ...(quantity === null || figures.quantity === null || rule.unit === null
        ? []
        : [{ label: 'quantity in the unit of the rule', expression: `${plain(quantity.value)} ${quantity.unit}`, value: figures.quantity, unit: rule.unit }]),
      hoursStep('hours by the rule', `${plain(rule.setupHours)}${perUnit}`, byQuantity),
      hoursStep('not below the minimum', `max(${plain(rule.minimumHours)}, ${plain(byQuantity)})`, before),
      hoursStep('with access', `${plain(before)} × ${plain(accessFactor)}`, exact),
      hoursStep('hours', `${plain(exact)} rounded up to a multiple of ${plain(hourIncrement)}`, hours),
      { label: 'amount', expression: `${plain(hours)} × ${plain(sellRate)}`, value: plain(amount), unit: currency },
    ],
  };
}

function quantityInputs({ quantity }: LaborLineInput): WorkingValue[] {
  if (quantity === null) return [];
  const { name, value, unit, source } = quantity;
  return [{ name, value: plain(value), unit, ...(source !== undefined && { source }) }];
}

function ruleInputs({ rule, accessFactor, hourIncrement, sellRate, currency }: LaborLineInput): WorkingValue[] {
  const source = `labor rule ${rule.name} (${rule.costCode}), ${rule.id}`;
  const perUnit = { name: 'hours per unit', value: plain(rule.hoursPerUnit), unit: `h/${rule.unit ?? 'each'}`, source };
  return [
    { name: 'setup hours', value: plain(rule.setupHours), unit: 'h', source },
    ...(rule.unit === null ? [] : [perUnit]),
    { name: 'minimum hours', value: plain(rule.minimumHours), unit: 'h', source },
    { name: 'access factor', value: plain(accessFactor) },
    { name: 'hour increment', value: plain(hourIncrement), unit: 'h' },
    { name: 'sell rate', value: plain(sellRate), unit: `${currency}/h` },
  ];
}
