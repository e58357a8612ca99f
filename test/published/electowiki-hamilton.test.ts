// electowiki, "Hamilton method" (largest remainder). V2: read in the wiki, recomputed equal.
// The second apportionment is M (from memory, recomputed); the money rows are D.
import { decimal, plain } from '../../src/domain/decimal.js';
import { allocate } from '../../src/domain/money/index.js';

function seats(total: number, weights: number[]): number[] {
  return allocate(decimal(total), weights.map(decimal), 'JPY').map((share) => share.toNumber());
}

test('V2: gives 60 seats to fifteen populations as published', () => {
  const populations = [
    630560, 475327, 432879, 353523, 331589, 278514, 236841, 206236, 179570, 141822, 85533, 70835, 68705, 68446, 55540,
  ];
  expect(seats(60, populations)).toEqual([11, 8, 7, 6, 6, 5, 4, 3, 3, 2, 1, 1, 1, 1, 1]);
});

test('M: gives 10 seats to six parties', () => {
  expect(seats(10, [47000, 16000, 15800, 12000, 6100, 3100])).toEqual([5, 2, 1, 1, 1, 0]);
});

test.each([
  ['100.00', ['1', '1', '1'], ['33.34', '33.33', '33.33']],
  ['0.05', ['3', '7'], ['0.02', '0.03']],
  ['0.01', ['1', '1'], ['0.01', '0']],
  ['1000.01', ['50', '30', '20'], ['500.01', '300', '200']],
  ['6.75', ['1000', '500', '2500'], ['1.69', '0.84', '4.22']],
  ['-100.00', ['1', '1', '1'], ['-33.34', '-33.33', '-33.33']],
  ['10.00', ['0', '1', '0'], ['0', '10', '0']],
])('D: splits %s by %j', (total, weights, shares) => {
  expect(allocate(decimal(total), weights.map(decimal), 'USD').map(plain)).toEqual(shares);
});
