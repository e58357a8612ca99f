// 26 USC 3101(b), 3301 (V: 1.45 %, 6.0 %); 3111(a), 3302, 3306(b)(1) from memory (M: 6.2 %, credit of 5.4 %, $7,000); the
// social security base of 2026, $184,500, and the rows of workers' compensation as others quote them (V2).
// The table is C: computed from these with a made-up state rate of 2.7 % on $9,000 and insurance of 6.50 a hundred.
import { decimal, sumDecimals } from '../../src/domain/decimal.js';
import { burdenOn } from '../../src/domain/worktime/week/index.js';

const rate = (percent: string, cap: string | null) => ({ percent: decimal(percent), yearlyWageCap: cap === null ? null : decimal(cap) });
const COMPONENTS = [rate('6.2', '184500'), rate('1.45', null), rate('0.6', '7000'), rate('2.7', '9000'), rate('6.5', null)];

test.each([
  ['0', ['62.00', '14.50', '6.00', '27.00', '65.00'], '174.50'],
  ['6500', ['62.00', '14.50', '3.00', '27.00', '65.00'], '171.50'],
  ['20000', ['62.00', '14.50', '0.00', '0.00', '65.00'], '141.50'],
  ['184500', ['0.00', '14.50', '0.00', '0.00', '65.00'], '79.50'],
])('C: on $1,000 after %s in the year', (before, parts, total) => {
  const amounts = COMPONENTS.map((component) => burdenOn(component, decimal(1000), decimal(before), 'USD'));
  expect([amounts.map((amount) => amount.toFixed(2)), sumDecimals(amounts).toFixed(2)]).toEqual([parts, total]);
});

test.each([
  ['C: federal unemployment tax of a year', '7000', '6.0', '420.00'],
  ['C: the credit against it', '7000', '5.4', '378.00'],
  ['C: what is left of it', '7000', '0.6', '42.00'],
  ['V2: insurance on 500,000 at 2.50', '500000', '2.5', '12500.00'],
  ['V2: insurance on 420,000 at 3.80', '420000', '3.8', '15960.00'],
  ['C: insurance on 1,234.56 at 6.50 with a factor of 0.95', '1234.56', '6.175', '76.23'],
  ['C: social security on 1,234.56', '1234.56', '6.2', '76.54'],
  ['C: Medicare on 1,234.56', '1234.56', '1.45', '17.90'],
])('%s', (_case, wages, percent, amount) => {
  expect(burdenOn(rate(percent, null), decimal(wages), decimal(0), 'USD').toFixed(2)).toBe(amount);
});
