/**
 * V: 29 CFR 1926.651 and 1926.652 (text) and Subpart P, Appendix B (slopes, as reproduced in trade tables); NEC 680.22 (as
 * quoted among inspectors) and California's title 8, section 2569.5, both for pools; inspectors' article on NEC 680 and 682
 * (cords of 10 ft, low-water cutoff); CPSC release and ordinances (24 in); Arizona Revised Statutes 36-1681 (18 in, as
 * reported); 75 FR 31775 (4 June 2010); Safe Drinking Water Act section 1417 (EPA page).
 */
import { convert } from '../../src/domain/quantity/index.js';
import { barrierCautions, dischargeCautions, electricalCautions, trenchCautions, waterSupplyCautions, type Caution, type Soil } from '../../src/domain/trade/safety/index.js';

const feet = (value: number): number => convert(value, 'ft', 'm');
const text = (cautions: readonly Caution[]): string => cautions.map(({ text: said, source }) => `${said} [${source}]`).join('\n');
const trench = (depthFt: number, soil: Soil = 'type-c', spoilFt: number | null = 10) => trenchCautions({ depthM: feet(depthFt), soil, spoilDistanceM: spoilFt === null ? null : feet(spoilFt) });
const electric = (receptacleFt: number | null, cordFt: number | null = null) =>
  text(electricalCautions({ receptacleDistanceM: receptacleFt === null ? null : feet(receptacleFt), cordLengthM: cordFt === null ? null : feet(cordFt), submersiblePump: true, metalNearWater: false }).cautions);

it.each<[Soil, number, number]>([['type-a', 0.75, 53], ['type-b', 1, 45], ['type-c', 1.5, 34], ['unknown', 1.5, 34]])('V: soil of %s is sloped back %d for each 1 of depth, %d degrees', (soil, ratio, degrees) => {
  const { slopeBackM } = trench(8, soil);
  expect(slopeBackM).toBeCloseTo(feet(8) * ratio, 12);
  expect(Math.abs((Math.atan(feet(8) / slopeBackM) * 180) / Math.PI - degrees)).toBeLessThan(0.5);
});

it.each<[number, string, boolean]>([
  [5, '1926.652(a)(1)', true],
  [5, 'Nobody enters before it stands', true],
  [4.9, 'Nobody enters before it stands', false],
  [4, '1926.651(c)(2)', true],
  [3.9, '1926.651(c)(2)', false],
  [20.1, 'registered professional engineer', true],
  [20, 'registered professional engineer', false],
])('V: a trench %d ft deep brings up %s: %p', (depth, says, said) => {
  expect(text(trench(depth).cautions).includes(says)).toBe(said);
});

it.each<[number | null, boolean]>([[1.9, true], [2, false], [null, true]])('V: spoil %p ft from the edge is too near: %p', (distance, said) => {
  expect(text(trench(3, 'type-c', distance).cautions).includes('1926.651(j)(2)')).toBe(said);
});

it.each<[number | null, [six: boolean, ten: boolean, twenty: boolean]]>([
  [5.9, [true, false, true]],
  [6, [false, true, true]],
  [9.9, [false, true, true]],
  [10, [false, false, true]],
  [20, [false, false, true]],
  [20.1, [false, false, false]],
  [null, [true, false, true]],
])('V: a receptacle %p ft from the water meets 6, 10 and 20 ft: %p', (distance, said) => {
  const cautions = electric(distance);
  expect(['nearer than 6 ft', 'at least 10 ft', 'within 20 ft'].map((limit) => cautions.includes(limit))).toEqual(said);
});

it('V: cords of submersible equipment are held to 10 ft, and it wants a low-water cutoff', () => {
  expect(electric(30, 10.1)).toContain('limited to 10 ft');
  expect(electric(30, 10)).not.toContain('limited to 10 ft');
  expect(electric(30)).toContain('low-water cutoff');
});

it('V: many places ask for a barrier 48 in high from 24 in of water, some from 18 in, and the CPSC counts 150 drownings a year', () => {
  const at = (inches: number): string => text(barrierCautions(convert(inches, 'in', 'm'), false).cautions);
  expect(at(24)).toMatch(/about 150 under five.*At 24 in .* at least 48 in/s);
  expect(at(23.9)).toMatch(/From 18 in .*36-1681/s);
  expect(at(17.9)).not.toContain('From 18 in');
});

it('V: residues of pesticides bring up the federal notice on their discharge', () => {
  const to = (treated: boolean): string => text(dischargeCautions({ to: 'storm-drain', turbid: false, chlorinated: false, salted: false, treated, livingThings: false }).cautions);
  expect(to(true)).toContain('75 FR 31775 (4 June 2010)');
  expect(to(false)).not.toContain('75 FR 31775');
});

it('V: lead-free is at most 0.25 % over wetted surfaces and 0.2 % in solder and flux', () => {
  expect(text(waterSupplyCautions({ drinkingWater: true, autoFill: false, sharedPipe: true }).cautions)).toMatch(/0\.25 % lead over the wetted surfaces, 0\.2 % in solder and flux.*section 1417/s);
});
