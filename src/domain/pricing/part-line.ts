import { decimal, plain, type Decimal } from '../decimal.js';
import { roundMoney } from '../money/index.js';
import type { Working } from '../working.js';
import { amountOf, requireNotNegative, requirePositive } from './price-checks.js';

export interface PartLineInput {
  /** Identity of the part's very version, kept in the working. */
  readonly id: string;
  readonly name: string;
  readonly unitCost: Decimal;
  /** Percent on cost: 35 is 35 %. Not a margin. */
  readonly markupPercent: Decimal;
  /** Units in the smallest package sold. */
  readonly packSize: Decimal;
  /** Units wanted. */
  readonly quantity: Decimal;
  readonly currency: string;
}

export interface PartLine {
  readonly unitPrice: Decimal;
  /** Whole packs, in units. */
  readonly quantity: Decimal;
  readonly amount: Decimal;
  readonly unitCost: Decimal;
  /** Unit cost × quantity, rounded to the minor unit. */
  readonly cost: Decimal;
  readonly working: Working;
}

/**
 * Unit price = unit cost × (1 + markup / 100), rounded half up; quantity rounded up to whole packs; amount = unit price
 * × quantity, rounded half up: the printed price times the printed quantity is the printed amount.
 * @throws DomainError at /unitCost, /markupPercent, /packSize or /quantity (also when the amount is too large)
 */
export function partLine(input: PartLineInput): PartLine {
  const { unitCost, markupPercent, packSize, currency } = input;
  requireNotNegative(unitCost, '/unitCost');
  requireNotNegative(markupPercent, '/markupPercent');
  requirePositive(packSize, '/packSize');
  requirePositive(input.quantity, '/quantity');
  const unitPrice = roundMoney(decimal(unitCost).times(decimal(markupPercent).div(100).plus(1)), currency);
  const packs = decimal(input.quantity).div(packSize).ceil();
  const quantity = packs.times(packSize);
  const amount = amountOf(quantity, unitPrice, currency, '/quantity');
  const cost = amountOf(quantity, unitCost, currency, '/quantity');
  const working = partWorking(input, { unitPrice, packs, quantity, amount });
  return { unitPrice, quantity, amount, unitCost, cost, working };
}

interface PartFigures {
  readonly unitPrice: Decimal;
  readonly packs: Decimal;
  readonly quantity: Decimal;
  readonly amount: Decimal;
}

function partWorking(input: PartLineInput, { unitPrice, packs, quantity, amount }: PartFigures): Working {
  const { currency } = input;
  const [cost, markup, pack, wanted] = [input.unitCost, input.markupPercent, input.packSize, input.quantity].map(plain);
  const source = `part ${input.name}, ${input.id}`;
  return {
    rule: 'Unit price = unit cost × (1 + markup / 100), rounded half up; quantity in whole packs; amount rounded half up',
    inputs: [
      { name: 'unit cost', value: String(cost), unit: currency, source },
      { name: 'markup', value: String(markup), unit: '%', source },
      { name: 'pack size', value: String(pack), source },
      { name: 'quantity wanted', value: String(wanted) },
    ],
    steps: [
      { label: 'unit price', expression: `${cost} × (1 + ${markup} / 100)`, value: plain(unitPrice), unit: currency },
      { label: 'packs', expression: `${wanted} / ${pack}, rounded up`, value: plain(packs) },
      { label: 'quantity', expression: `${plain(packs)} × ${pack}`, value: plain(quantity) },
      { label: 'amount', expression: `${plain(quantity)} × ${plain(unitPrice)}`, value: plain(amount), unit: currency },
    ],
  };
}
