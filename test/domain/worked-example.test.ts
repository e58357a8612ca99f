// The worked example of the HTTP contract, to the cent: one survey, two labor rules, three parts.
import { decimal, plain } from '../../src/domain/decimal.js';
import { laborLine, partLine, quoteTotals, type LaborRule } from '../../src/domain/pricing/index.js';
import { takeoff, takeoffValue, type TakeoffQuantityName } from '../../src/domain/trade/index.js';
import type { Unit } from '../../src/domain/quantity/index.js';

const survey = takeoff({
  outline: { shape: 'ellipse', length: { value: 24, unit: 'ft' }, width: { value: 16, unit: 'ft' } },
  probes: {
    unit: 'in',
    readings: [
      { toSediment: 18, toBottom: 27 },
      { toSediment: 20, toBottom: 30 },
      { toSediment: 22, toBottom: 30 },
      { toSediment: 16, toBottom: 25 },
    ],
  },
});

const cleanOut: LaborRule = {
  id: 'clean-out-1',
  name: 'Clean-out by hand',
  costCode: 'cleanout',
  unit: 'yd3',
  setupHours: decimal('3'),
  hoursPerUnit: decimal('1.75'),
  minimumHours: decimal('6'),
};

const edge: LaborRule = {
  id: 'edge-1',
  name: 'Rebuild edge',
  costCode: 'edge',
  unit: 'ft',
  setupHours: decimal('2'),
  hoursPerUnit: decimal('0.45'),
  minimumHours: decimal('4'),
};

function priced(rule: LaborRule, name: TakeoffQuantityName, si: Unit) {
  const quantity = takeoffValue(survey, name, si);
  return laborLine({
    quantity: quantity && { name, value: quantity.value, unit: quantity.unit },
    rule,
    accessFactor: decimal('1.15'),
    hourIncrement: decimal('0.25'),
    sellRate: decimal('68.00'),
    currency: 'USD',
  });
}

function part(unitCost: string, markupPercent: string, quantity: string) {
  return partLine({
    id: 'p1',
    name: 'part',
    unitCost: decimal(unitCost),
    markupPercent: decimal(markupPercent),
    packSize: decimal('1'),
    quantity: decimal(quantity),
    currency: 'USD',
  });
}

test.each<[TakeoffQuantityName, Unit, number, number]>([
  ['surfaceArea', 'ft2', 301.5929, 4],
  ['perimeter', 'ft', 63.4618, 4],
  ['sedimentMeanThickness', 'in', 9, 12],
  ['sedimentVolume', 'yd3', 8.3776, 4],
  ['meanDepth', 'in', 28, 12],
  ['maxDepth', 'in', 30, 12],
  ['waterVolume', 'gal', 5264.2, 1],
])('takes off %s in %s', (name, unit, expected, digits) => {
  expect(takeoffValue(survey, name, unit)?.value).toBeCloseTo(expected, digits);
});

test('prices the clean-out at 20.50 h and 1,394.00', () => {
  const line = priced(cleanOut, 'sedimentVolume', 'm3');
  expect([plain(line.hours), line.amount.toFixed(2)]).toEqual(['20.5', '1394.00']);
  const exact = line.working.steps.find((step) => step.label === 'with access');
  expect(Number(exact?.value)).toBeCloseTo(20.3099, 4);
});

test('prices the edge at 35.25 h and 2,397.00', () => {
  const line = priced(edge, 'perimeter', 'm');
  expect([plain(line.hours), line.amount.toFixed(2)]).toEqual(['35.25', '2397.00']);
  const exact = line.working.steps.find((step) => step.label === 'with access');
  expect(Number(exact?.value)).toBeCloseTo(35.1415, 4);
});

test('prices the same whether the quantity comes in SI or in the unit of the rule', () => {
  const si = priced(cleanOut, 'sedimentVolume', 'm3');
  const us = priced(cleanOut, 'sedimentVolume', 'yd3');
  expect(us.amount.eq(si.amount)).toBe(true);
});

test.each([
  ['412.35', '35', '1', '556.67', '556.67'],
  ['0.87', '40', '640', '1.22', '780.80'],
  ['186.40', '30', '2', '242.32', '484.64'],
])('prices a part of cost %s with %s %% on it', (cost, markup, quantity, unitPrice, amount) => {
  const line = part(cost, markup, quantity);
  expect([line.unitPrice.toFixed(2), line.amount.toFixed(2)]).toEqual([unitPrice, amount]);
});

test('totals net 5,613.11, tax 113.88 on 1,822.11 and gross 5,726.99', () => {
  const parts = [part('412.35', '35', '1'), part('0.87', '40', '640'), part('186.40', '30', '2')];
  const totals = quoteTotals(
    [
      { category: null, amount: priced(cleanOut, 'sedimentVolume', 'm3').amount },
      { category: null, amount: priced(edge, 'perimeter', 'm').amount },
      ...parts.map(({ amount }) => ({ category: 'sales', amount })),
    ],
    [{ code: 'sales', name: 'Sales tax', rate: decimal('6.25') }],
    'USD',
  );
  expect(totals.netTotal.toFixed(2)).toBe('5613.11');
  expect(totals.taxes.map(({ base, tax }) => [base.toFixed(2), tax.toFixed(2)])).toEqual([['1822.11', '113.88']]);
  expect(totals.grossTotal.toFixed(2)).toBe('5726.99');
});
