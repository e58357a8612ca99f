/**
 * Sheets on a waterfall's lip. The table is D, derived from the suppressed Francis formula; flows for a look are C,
 * common practice without a source; the coefficient of a broad crest is V (EPA SWMM Reference Manual, vol. II).
 */
import { convert } from '../../src/domain/quantity/index.js';
import { lipFlow, lookFlow, sheetThickness } from '../../src/domain/trade/weir/index.js';

const gph = (flow: number): number => convert(flow * 3600, 'm3/h', 'gph');
const inch = convert(1, 'in', 'm');

it.each([[0.25, 270], [0.5, 763], [0.75, 1401], [1, 2157], [1.5, 3963], [2, 6102]])('%d in over a sharp lip of 1 ft are %d gph', (thickness, expected) => {
  expect(Math.abs(gph(lipFlow('sharp', 0.3048, thickness * inch)) - expected)).toBeLessThan(1);
});

it.each([['trickle', 50, 0.43], ['sheet', 100, 0.68], ['full-sheet', 150, 0.89], ['cascade', 200, 1.07]] as const)('a %s is %d gph for each inch, %d in thick on a sharp lip', (look, perInch, thickness) => {
  const flow = lookFlow(look, 10 * inch);
  expect(gph(flow)).toBeCloseTo(perInch * 10, 6);
  expect(Math.abs(sheetThickness('sharp', 10 * inch, flow) / inch - thickness)).toBeLessThan(0.011);
});

it('100 gph for each inch stand 0.79 in high on flat stone', () => {
  expect(Math.abs(sheetThickness('flat-stone', inch, lookFlow('sheet', inch)) / inch - 0.79)).toBeLessThan(0.011);
});
