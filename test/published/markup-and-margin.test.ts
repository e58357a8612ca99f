// Markup on cost u and margin on price m: m = u / (1 + u), textbook identities. V2: the conversion and the case "20 % of
// cost is 16.67 % of the price"; the other rows are D.
import { decimal } from '../../src/domain/decimal.js';
import { partLine } from '../../src/domain/pricing/index.js';
import { marginPercent } from '../../src/domain/statistics/index.js';

test.each([
  ['D', '10', '1100.00', '9.0909'],
  ['V2', '20', '1200.00', '16.6667'],
  ['D', '25', '1250.00', '20.0000'],
  ['D', '33.33333333333333333333', '1333.33', '24.9998'],
  ['D', '50', '1500.00', '33.3333'],
  ['D', '100', '2000.00', '50.0000'],
])('%s: %s %% on a cost of 1000 is a price of %s and a margin of %s %%', (_mark, markup, price, expected) => {
  const line = partLine({
    id: 'p',
    name: 'part',
    unitCost: decimal('1000'),
    markupPercent: decimal(markup),
    packSize: decimal(1),
    quantity: decimal(1),
    currency: 'USD',
  });
  expect(line.amount.toFixed(2)).toBe(price);
  expect(marginPercent(line.amount, line.cost)?.toFixed(4)).toBe(expected);
});

test('D: rounding the unit price once a unit makes 100 at 0.1155 cost 12.00, not 11.55', () => {
  const line = partLine({
    id: 'p',
    name: 'part',
    unitCost: decimal('0.11'),
    markupPercent: decimal('5'),
    packSize: decimal(1),
    quantity: decimal(100),
    currency: 'USD',
  });
  expect([line.unitPrice.toFixed(2), line.amount.toFixed(2)]).toEqual(['0.12', '12.00']);
});
