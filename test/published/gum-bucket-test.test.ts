/**
 * The bucket test is common practice (C); its arithmetic D. Uncertainty by JCGM 100:2008 (GUM): limits of a rectangular
 * distribution (4.3.7), combination (5.1.2), coverage factor 2 (6.2); the clauses from memory (M), the products D.
 */
import { convert, fromSi } from '../../src/domain/quantity/index.js';
import { leakRate } from '../../src/domain/trade/water-balance/index.js';

const inches = (value: number): number => convert(value, 'in', 'm');
const AREA = convert(176, 'ft2', 'm2');

it('176 ft2 that fall 1.25 in while the bucket falls 0.25 in lose 109.7 gal a day (D)', () => {
  const leak = leakRate([{ pondDropM: inches(1.25), bucketDropM: inches(0.25), hours: 24 }], AREA, { readingM: inches(1 / 16), areaPercent: 0 });
  expect(fromSi(leak.leakM3PerDay, 'gal')).toBeCloseTo(109.7, 1);
});

it('a quarter inch on 200 ft2 is 31.2 gal (D)', () => {
  const leak = leakRate([{ pondDropM: inches(0.25), bucketDropM: 0, hours: 24 }], convert(200, 'ft2', 'm2'), { readingM: inches(1 / 16), areaPercent: 0 });
  expect(fromSi(leak.leakM3PerDay, 'gal')).toBeCloseTo(31.2, 1);
});

it('four marks of plus or minus 1/16 in and an area of plus or minus 5 % combine to what the GUM says (D)', () => {
  const leak = leakRate([{ pondDropM: inches(1.25), bucketDropM: inches(0.25), hours: 24 }], AREA, { readingM: inches(1 / 16), areaPercent: 5 });
  const perInch = 176 * 0.623376623;
  const fromMarks = (Math.sqrt(4) * (1 / 16) * perInch) / Math.sqrt(3);
  const fromArea = (0.05 * perInch) / Math.sqrt(3);
  expect(fromSi(leak.uncertaintyM3PerDay, 'gal')).toBeCloseTo(2 * Math.hypot(fromMarks, fromArea), 5);
});
