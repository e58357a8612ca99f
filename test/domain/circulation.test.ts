import { Decimal } from '../../src/domain/decimal.js';
import { circulationLoop, longestChord, rankPumps, shortCircuit, systemCurve, type PumpOffer } from '../../src/domain/trade/hydraulics/index.js';
import { waterfall } from '../../src/domain/trade/weir/index.js';
import { feet, gpm, inches, inGpm, LOOP, pipe, quadraticCurve } from './hydraulics-support.js';

const CURVE = quadraticCurve(25, 0.0035, 84, 43);
const DUTY = { wantedFlow: gpm(50), hoursPerDay: 24, daysPerYear: 365, energyRate: new Decimal('0.16'), currency: 'USD' };
const offer = (name: string, change: Partial<PumpOffer> = {}): PumpOffer => ({ name, curve: CURVE, powerW: 400, price: new Decimal(400), ...change });

it('gives turnover, efficiency and losses at the operating point, whose parts sum to the head', () => {
  const loop = circulationLoop({ system: LOOP, pump: { curve: CURVE, powerW: 400 }, waterVolumeM3: gpm(56.6) * 3600 });
  if (loop.hazenWilliams.kind !== 'point') throw new Error('no point');
  expect(loop.turnoverHours).toBeCloseTo(1, 2);
  expect(loop.wireToWater).toBeCloseTo(0.367, 2);
  const lost = loop.runs.reduce((sum, run) => sum + run.hazenWilliamsM + run.minorM, LOOP.staticLiftM);
  expect(lost).toBeCloseTo(loop.hazenWilliams.head, 9);
});

it('warns of velocity by the side of the pump', () => {
  const system = { ...LOOP, runs: [pipe({ side: 'suction', lengthM: 1 }), pipe({ innerDiameterM: inches(3.068) })] };
  const { warnings } = circulationLoop({ system, pump: { curve: CURVE, powerW: null }, waterVolumeM3: null });
  expect(warnings.filter((text) => text.startsWith('Run 1 (suction)'))).toHaveLength(1);
  expect(warnings.filter((text) => text.startsWith('Run 2'))).toEqual([]);
});

it('says why there is no operating point, and gives no turnover then', () => {
  const weak = circulationLoop({ system: { ...LOOP, staticLiftM: feet(30) }, pump: { curve: CURVE, powerW: 400 }, waterVolumeM3: 20 });
  expect([weak.hazenWilliams.kind, weak.turnoverHours, weak.wireToWater]).toEqual(['cannot-lift', null, null]);
  expect(weak.warnings[0]).toMatch(/25\.0 ft of head.*30\.0 ft/);
  const strong = circulationLoop({ system: { ...LOOP, staticLiftM: 0, runs: [pipe({ innerDiameterM: inches(6.065), lengthM: 1 })] }, pump: { curve: CURVE.slice(0, 10), powerW: null }, waterVolumeM3: null });
  expect(strong.hazenWilliams.kind).toBe('past-curve');
});

it('ranks by price and five years of energy, and gives each other pump its reason', () => {
  const offers = [
    offer('cheap to buy', { price: new Decimal('199.00'), powerW: 800 }),
    offer('frugal', { price: new Decimal('900.00'), powerW: 350 }),
    offer('too weak for the flow', { curve: quadraticCurve(18, 0.0035, 71, 36) }),
    offer('too weak for the lift', { curve: quadraticCurve(7, 0.0035, 44, 23) }),
    offer('stops short', { curve: CURVE.slice(0, 20) }),
    offer('too good to be true', { powerW: 100 }),
  ];
  const { ranked, failed } = rankPumps(offers, systemCurve(LOOP), DUTY);
  expect(ranked.map(({ index }) => index)).toEqual([1, 0]);
  // 0.35 kW × 8,760 h × 0.16 = 490.56 a year; 900 + 5 × 490.56.
  expect(ranked.map(({ fiveYearCost }) => fiveYearCost.toFixed(2))).toEqual(['3352.80', '5805.40']);
  expect(failed.map(({ index, kind }) => [index, kind])).toEqual([[2, 'too-little-flow'], [3, 'cannot-lift'], [4, 'past-curve'], [5, 'impossible-power']]);
  expect(failed[0]?.reason).toMatch(/^It gives \d+\.\d gpm of the 50\.0 gpm wanted\.$/);
});

it('ranks pumps that cost the same in the order they came', () => {
  const { ranked } = rankPumps([offer('b'), offer('a')], systemCurve(LOOP), DUTY);
  expect(ranked.map(({ index }) => index)).toEqual([0, 1]);
});

it('warns of short-circuiting under half the longest chord, and not at half', () => {
  const box = { shape: 'rectangle', length: { value: 4, unit: 'm' }, width: { value: 3, unit: 'm' } } as const;
  expect(longestChord(box)).toBe(5);
  expect(longestChord({ ...box, shape: 'ellipse' })).toBe(4);
  expect(longestChord({ shape: 'polygon', unit: 'm', points: [[0, 0], [4, 0], [4, 3], [0, 3]] })).toBe(5);
  expect([shortCircuit(box, 2.49).tooClose, shortCircuit(box, 2.5).tooClose]).toEqual([true, false]);
});

it('says whether the pump gives a waterfall its look at the operating point', () => {
  const pump = { system: LOOP, curve: CURVE };
  const wide = waterfall({ lipWidthM: inches(36), lip: 'flat-stone', wanted: { look: 'sheet' }, pump });
  const narrow = waterfall({ lipWidthM: inches(24), lip: 'flat-stone', wanted: { look: 'sheet' }, pump });
  expect([inGpm(wide.neededFlow), wide.pumpGivesIt, narrow.pumpGivesIt]).toEqual([expect.closeTo(60, 6), false, true]);
  expect(wide.warnings.join()).toMatch(/The pump gives 56\.\d gpm of the 60\.0 gpm needed/);
  expect(waterfall({ lipWidthM: 1, lip: 'sharp', wanted: { thicknessM: 0.02 }, pump: null }).pumpGivesIt).toBeNull();
});
