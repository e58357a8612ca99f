import fc from 'fast-check';
import { Decimal as SharedDecimal } from 'decimal.js';
import { decimal, plain, type Decimal } from '../../src/domain/decimal.js';
import { laborLine, otherLine, partLine, roundUpToIncrement, type LaborLineInput } from '../../src/domain/pricing/index.js';
import { refusals } from './support.js';

const labor: LaborLineInput = {
  quantity: { name: 'sedimentVolume', value: 27, unit: 'ft3' },
  rule: {
    id: 'r1',
    name: 'Clean-out',
    costCode: 'cleanout',
    unit: 'yd3',
    setupHours: decimal(3),
    hoursPerUnit: decimal('1.75'),
    minimumHours: decimal(6),
  },
  accessFactor: decimal('1.15'),
  hourIncrement: decimal('0.25'),
  sellRate: decimal('68.00'),
  currency: 'USD',
};
const part = {
  id: 'p1',
  name: 'Liner',
  unitCost: decimal('0.87'),
  markupPercent: decimal(40),
  packSize: decimal(1),
  quantity: decimal(640),
  currency: 'USD',
};

test.each([
  ['20.3099', '0.25', '20.5'],
  ['20.5', '0.25', '20.5'],
  ['20.500000001', '0.25', '20.5'],
  ['20.5000000011', '0.25', '20.75'],
  ['20.499999999', '0.25', '20.5'],
  ['0', '0.25', '0'],
  ['0.0000000005', '0.25', '0'],
  ['0.1', '0.1', '0.1'],
  ['7', '3', '9'],
])('rounds %s h up to a multiple of %s: %s', (hours, increment, expected) => {
  expect(plain(roundUpToIncrement(decimal(hours), decimal(increment)))).toBe(expected);
});

test('never rounds below the hours, never a whole increment above, always to a multiple', () => {
  const positive = (max: number) => fc.integer({ min: 1, max }).map((n) => decimal(n).div(1_000));
  fc.assert(
    fc.property(positive(10_000_000), positive(8_000), (hours, increment) => {
      const up = roundUpToIncrement(hours, increment);
      return up.gte(hours) && up.minus(hours).lt(increment) && up.mod(increment).isZero();
    }),
  );
});

test('refuses negative hours and an increment of nothing', () => {
  expect(refusals(() => roundUpToIncrement(decimal(-1), decimal(1)))).toEqual(['/hours']);
  expect(refusals(() => roundUpToIncrement(decimal(NaN), decimal(1)))).toEqual(['/hours']);
  expect(refusals(() => roundUpToIncrement(decimal(1), decimal(0)))).toEqual(['/increment']);
});

test('charges the minimum hours, with access, when the quantity asks for less', () => {
  const line = laborLine(labor);
  expect([plain(line.hours), line.amount.toFixed(2), line.quantityInRuleUnit]).toEqual(['7', '476.00', 1]);
});

test('prices a rule that counts nothing by its setup and minimum alone', () => {
  const line = laborLine({ ...labor, quantity: null, rule: { ...labor.rule, unit: null } });
  expect([plain(line.hours), line.quantityInRuleUnit]).toEqual(['7', null]);
  expect(line.working.inputs.map(({ name }) => name)).not.toContain('hours per unit');
});

test.each<[string, Partial<LaborLineInput>, string]>([
  ['a missing quantity', { quantity: null }, '/quantity'],
  ['a quantity of another kind', { quantity: { name: 'perimeter', value: 1, unit: 'm' } }, '/quantity'],
  ['a negative quantity', { quantity: { name: 'sedimentVolume', value: -1, unit: 'm3' } }, '/quantity/value'],
  ['a quantity that is no number', { quantity: { name: 'sedimentVolume', value: NaN, unit: 'm3' } }, '/quantity'],
  ['a quantity for a rule that counts nothing', { rule: { ...labor.rule, unit: null } }, '/rule/unit'],
  ['negative setup hours', { rule: { ...labor.rule, setupHours: decimal(-1) } }, '/rule/setupHours'],
  ['negative hours per unit', { rule: { ...labor.rule, hoursPerUnit: decimal(-1) } }, '/rule/hoursPerUnit'],
  ['negative minimum hours', { rule: { ...labor.rule, minimumHours: decimal(-1) } }, '/rule/minimumHours'],
  ['an access factor of 0', { accessFactor: decimal(0) }, '/accessFactor'],
  ['an hour increment of 0', { hourIncrement: decimal(0) }, '/hourIncrement'],
  ['a negative sell rate', { sellRate: decimal(-1) }, '/sellRate'],
  ['an amount that money cannot hold', { sellRate: decimal('999999999999') }, '/quantity'],
])('refuses %s on a labor line', (_name, change, pointer) => {
  expect(refusals(() => laborLine({ ...labor, ...change }))).toEqual([pointer]);
});

test('shows a labor working that can be recomputed step by step', () => {
  const { working } = laborLine({ ...labor, quantity: { name: 'sedimentVolume', value: 6.4052, unit: 'm3' } });
  const value = (label: string) => Number(working.steps.find((step) => step.label === label)?.value);
  const cubicYards = 6.4052 / 0.764554857984;
  expect(value('quantity in the unit of the rule')).toBeCloseTo(cubicYards, 12);
  expect(value('hours by the rule')).toBeCloseTo(3 + 1.75 * cubicYards, 12);
  expect(value('with access')).toBeCloseTo((3 + 1.75 * cubicYards) * 1.15, 12);
  expect(value('amount')).toBe(value('hours') * 68);
  expect(working.inputs.find(({ name }) => name === 'hours per unit')?.source).toContain('r1');
});

test('sells whole packs', () => {
  const line = partLine({ ...part, packSize: decimal(50), quantity: decimal(101) });
  expect([plain(line.quantity), line.amount.toFixed(2), line.cost.toFixed(2)]).toEqual(['150', '183.00', '130.50']);
  expect(plain(partLine({ ...part, packSize: decimal('0.1'), quantity: decimal('0.3') }).quantity)).toBe('0.3');
});

test('never sells less than wanted nor a whole pack more, and prints price times quantity as the amount', () => {
  const units = fc.integer({ min: 1, max: 1_000_000 }).map((n) => decimal(n).div(100));
  fc.assert(
    fc.property(units, units, units, (packSize, quantity, unitCost) => {
      const line = partLine({ ...part, packSize, quantity, unitCost });
      expect(line.quantity.gte(quantity)).toBe(true);
      expect(line.quantity.minus(quantity).lt(packSize)).toBe(true);
      expect(line.quantity.times(line.unitPrice).minus(line.amount).abs().lte('0.005')).toBe(true);
    }),
  );
});

test.each<[string, Partial<typeof part>, string]>([
  ['a negative cost', { unitCost: decimal(-1) }, '/unitCost'],
  ['a negative markup', { markupPercent: decimal(-1) }, '/markupPercent'],
  ['a pack of nothing', { packSize: decimal(0) }, '/packSize'],
  ['a quantity of nothing', { quantity: decimal(0) }, '/quantity'],
  ['an amount that money cannot hold', { quantity: decimal('1e13') }, '/quantity'],
])('refuses %s on a part line', (_name, change, pointer) => {
  expect(refusals(() => partLine({ ...part, ...change }))).toEqual([pointer]);
});

test('prices any other line by quantity and price, credits too', () => {
  const line = (quantity: string): string[] => {
    const { amount, cost } = otherLine({ quantity: decimal(quantity), unitPrice: decimal('10.05'), unitCost: decimal('3.33'), currency: 'USD' });
    return [amount.toFixed(2), cost.toFixed(2)];
  };
  expect(line('1.5')).toEqual(['15.08', '5.00']);
  expect(line('-1.5')).toEqual(['-15.08', '-5.00']);
});

test('refuses any other line with a negative cost or too large an amount', () => {
  const line = { quantity: decimal(1), unitPrice: decimal(1), unitCost: decimal(1), currency: 'USD' };
  expect(refusals(() => otherLine({ ...line, unitCost: decimal(-1) }))).toEqual(['/unitCost']);
  expect(refusals(() => otherLine({ ...line, quantity: decimal('1e12') }))).toEqual(['/quantity']);
});

test('prices alike when handed decimals of a coarser make', () => {
  const Coarse = SharedDecimal.clone({ precision: 3, rounding: SharedDecimal.ROUND_DOWN });
  const coarse = (value: Decimal): Decimal => new Coarse(value);
  const { rule } = labor;
  const coarseRule = { ...rule, setupHours: coarse(rule.setupHours), hoursPerUnit: coarse(rule.hoursPerUnit), minimumHours: coarse(rule.minimumHours) };
  const quantity = { name: 'sedimentVolume', value: 12.345678, unit: 'm3' as const };
  const ours = laborLine({ ...labor, quantity });
  const theirs = laborLine({ ...labor, quantity, rule: coarseRule, accessFactor: coarse(labor.accessFactor), hourIncrement: coarse(labor.hourIncrement), sellRate: coarse(labor.sellRate) });
  expect(theirs.working).toEqual(ours.working);
  const coarsePart = partLine({ ...part, unitCost: coarse(part.unitCost), quantity: coarse(part.quantity), packSize: coarse(part.packSize) });
  expect(coarsePart.working).toEqual(partLine(part).working);
});

test('leaves the shared decimal constructor as the library made it', () => {
  expect([SharedDecimal.precision, SharedDecimal.rounding]).toEqual([20, 4]);
});
