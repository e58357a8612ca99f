import fc from 'fast-check';
import { decimal, plain, sumDecimals } from '../../src/domain/decimal.js';
import { allocate } from '../../src/domain/money/index.js';
import { refusals } from './support.js';

const total = fc.bigInt({ min: -(10n ** 14n), max: 10n ** 14n }).map((n) => decimal(n.toString()).div(100));
const weight = fc.bigInt({ min: 0n, max: 10n ** 18n }).map((n) => decimal(n.toString()).div(1_000_000));
const weights = fc.array(weight, { minLength: 1, maxLength: 30 }).filter((list) => list.some((w) => w.gt(0)));

test('hands out the total to the cent, whatever the weights', () => {
  fc.assert(fc.property(total, weights, (whole, list) => sumDecimals(allocate(whole, list, 'USD')).eq(whole)));
});

test('gives no share that is a cent or more off its exact part', () => {
  fc.assert(
    fc.property(total, weights, (whole, list) => {
      const sum = sumDecimals(list);
      return allocate(whole, list, 'USD').every((share, i) =>
        share.minus(whole.times(list[i] ?? 0).div(sum)).abs().lt('0.01'),
      );
    }),
  );
});

test('takes back by a negative total the very shares it charged', () => {
  fc.assert(
    fc.property(total, weights, (whole, list) => {
      const charged = allocate(whole, list, 'USD');
      const credited = allocate(whole.neg(), list, 'USD');
      expect(credited.map(plain)).toEqual(charged.map((share) => plain(share.isZero() ? share : share.neg())));
    }),
  );
});

test('gives a larger weight no smaller share, and no weight nothing', () => {
  fc.assert(
    fc.property(total, weights, (whole, list) => {
      const shares = allocate(whole.abs(), list, 'USD');
      list.forEach((a, i) => {
        if (a.isZero()) expect(shares[i]?.isZero()).toBe(true);
        list.forEach((b, j) => {
          if (a.gt(b)) expect(shares[i]?.gte(shares[j] ?? NaN)).toBe(true);
        });
      });
    }),
  );
});

test('gives the odd cents of a tie to the earliest', () => {
  const shares = allocate(decimal('0.05'), [1, 1, 1, 1].map(decimal), 'USD');
  expect(shares.map(plain)).toEqual(['0.02', '0.01', '0.01', '0.01']);
});

test('decides by remainders that differ beyond forty digits', () => {
  const list = [decimal('0.5'), decimal(`0.5${'0'.repeat(50)}1`)];
  expect(allocate(decimal('0.01'), list, 'USD').map(plain)).toEqual(['0', '0.01']);
});

test('splits nothing over weights of nothing', () => {
  expect(allocate(decimal(0), [decimal(0), decimal(0)], 'USD').map(plain)).toEqual(['0', '0']);
  expect(allocate(decimal(0), [], 'USD')).toEqual([]);
});

test('refuses a negative weight, weights of nothing, and a total that is not whole cents', () => {
  expect(refusals(() => allocate(decimal(1), [decimal(1), decimal(-1)], 'USD'))).toEqual(['/weights/1']);
  expect(refusals(() => allocate(decimal(1), [decimal(1), decimal(NaN)], 'USD'))).toEqual(['/weights/1']);
  expect(refusals(() => allocate(decimal(1), [decimal(0)], 'USD'))).toEqual(['/weights']);
  expect(refusals(() => allocate(decimal(1), [], 'USD'))).toEqual(['/weights']);
  expect(refusals(() => allocate(decimal('1.001'), [decimal(1)], 'USD'))).toEqual(['/total']);
  expect(refusals(() => allocate(decimal(1), [decimal(1)], 'ZZZ'))).toEqual(['']);
});
