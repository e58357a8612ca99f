/**
 * Oregon State College Extension Circular 550 (Aug 1952), Table 1, in gpm. Evidence V: the rows were read. They step
 * 0.01 ft although they are labelled in sixteenths of an inch.
 */
import { convert } from '../../src/domain/quantity/index.js';
import { weirFlow, type WeirKind } from '../../src/domain/trade/weir/index.js';

function gallons(kind: WeirKind, headFt: number, crestFt: number | null = null): { gpm: number; warnings: string[] } {
  const { flowM3PerS, warnings } = weirFlow({ kind, headM: headFt * 0.3048, crestM: crestFt === null ? null : crestFt * 0.3048, channelM: null, crestHeightM: null, downstreamHeadM: 0 });
  return { gpm: convert(flowM3PerS * 3600, 'm3/h', 'gpm'), warnings };
}

it.each([[0.2, 19.9, 0.04], [0.3, 56, 0.01], [0.32, 65.8, 0.01], [0.4, 115, 0.01], [0.49, 190, 0.01]])('a notch of 90 degrees at %d ft gives %d gpm', (head, table, tolerance) => {
  expect(Math.abs(gallons('v-notch-90', head).gpm / table - 1)).toBeLessThan(tolerance);
});

it.each([[0.2, 131, 265], [0.3, 237, 482], [0.32, 261, 531]])('Francis on a contracted crest at %d ft lies a little under the table: %d gpm on 1 ft, %d on 2 ft', (head, one, two) => {
  const shortfall = (crest: number, table: number): number => 1 - gallons('contracted', head, crest).gpm / table;
  expect(shortfall(1, one)).toBeGreaterThan(0.015);
  expect(shortfall(1, one)).toBeLessThan(0.05);
  expect(shortfall(2, two)).toBeGreaterThan(0.01);
  expect(shortfall(2, two)).toBeLessThan(0.015);
});

it('says that Francis reads low where the head is over a third of the crest', () => {
  expect(gallons('contracted', 0.4, 1).warnings.join()).toMatch(/third of the crest/);
  expect(gallons('contracted', 0.3, 1).warnings).toEqual([]);
});

/** ASTM D5242, as the table that cites it prints it (V). */
it.each([[0.2, 11.58], [0.25, 20.24], [0.3, 31.92]])('a notch of 60 degrees at %d ft gives %d gpm', (head, table) => {
  expect(Math.abs(gallons('v-notch-60', head).gpm / table - 1)).toBeLessThan(0.001);
});
