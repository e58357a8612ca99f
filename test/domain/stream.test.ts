import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { LINING_NAMES, LININGS, streamFlow, type StreamBedInput, type StreamFlow, type StreamInput, type StreamState } from '../../src/domain/trade/stream/index.js';
import { refusals } from './support.js';

const BED: StreamBedInput = { bottomWidthM: 0.6, sideSlope: 1, lengthM: 6, fallM: 0.15, lining: 'gravel', stoneSizeM: null };
const PUMP: NonNullable<StreamInput['pump']> = {
  system: { runs: [{ side: 'discharge', innerDiameterM: 0.05, lengthM: 15, hazenWilliamsC: 150, roughnessM: 1.5e-6, fittings: [], otherK: 3 }], staticLiftM: 1.5, vessels: [], waterTemperatureC: 15 },
  curve: [{ flowM3PerS: 0, headM: 6 }, { flowM3PerS: 0.004, headM: 1 }],
};
const stream = (change: Partial<StreamBedInput> = {}, more: Partial<StreamInput> = {}): StreamFlow => streamFlow({ bed: { ...BED, ...change }, wanted: { depthM: 0.05 }, pump: null, basin: null, ...more });
const carrying = (flowM3PerS: number, change: Partial<StreamBedInput> = {}): StreamState => stream(change, { wanted: { flowM3PerS } }).wanted as StreamState;
const says = (change: Partial<StreamBedInput>, more: Partial<StreamInput> = {}): string => stream(change, more).warnings.join('\n');

const loose = LINING_NAMES.filter((name) => LININGS[name].usualStoneM !== null);
const bed: fc.Arbitrary<StreamBedInput> = fc.record({
  bottomWidthM: fc.double({ min: 0.3, max: 3, noNaN: true }),
  sideSlope: fc.double({ min: 0, max: 4, noNaN: true }),
  lengthM: fc.double({ min: 1, max: 50, noNaN: true }),
  fallM: fc.double({ min: 0.01, max: 0.9, noNaN: true }),
  lining: fc.constantFrom(...loose),
  stoneSizeM: fc.option(fc.double({ min: 0.005, max: 0.3, noNaN: true })),
});
const flow = fc.double({ min: 1e-5, max: 0.01, noNaN: true });

test('the flow that a depth needs runs at that depth', () => {
  fc.assert(
    fc.property(bed, fc.double({ min: 0.002, max: 0.5, noNaN: true }), (one, depthM) => {
      const needed = stream(one, { wanted: { depthM } }).wanted?.flow ?? 0;
      expect(carrying(needed, one).depthM / depthM).toBeCloseTo(1, 9);
    }),
  );
});

test('more flow stands deeper, more fall runs shallower and faster, and a wider bed stands shallower', () => {
  fc.assert(
    fc.property(bed, flow, fc.double({ min: 1.01, max: 3, noNaN: true }), (one, q, more) => {
      const here = carrying(q, one);
      expect(carrying(q * more, one).depthM).toBeGreaterThan(here.depthM);
      const steeper = carrying(q, { ...one, fallM: one.fallM * 1.05 });
      expect(steeper.depthM).toBeLessThan(here.depthM);
      expect(steeper.velocity).toBeGreaterThan(here.velocity);
      expect(carrying(q, { ...one, bottomWidthM: one.bottomWidthM * more }).depthM).toBeLessThan(here.depthM);
    }),
  );
});

test('a stream of twice the size on the same slope carries 2^(8/3) times the flow, with the table\'s roughness', () => {
  fc.assert(
    fc.property(bed, fc.double({ min: 0.01, max: 0.5, noNaN: true }), (one, depthM) => {
      const table = { ...one, stoneSizeM: null };
      const twice = { ...table, bottomWidthM: 2 * one.bottomWidthM, lengthM: 2 * one.lengthM, fallM: 2 * one.fallM };
      const of = (input: StreamBedInput, depth: number): number => stream(input, { wanted: { depthM: depth } }).wanted?.flow ?? 0;
      expect(of(twice, 2 * depthM) / of(table, depthM)).toBeCloseTo(2 ** (8 / 3), 9);
    }),
  );
});

test('the depth lies between those of the least and the most roughness, and larger stones only hold the water back', () => {
  fc.assert(
    fc.property(bed, flow, fc.double({ min: 0.005, max: 0.15, noNaN: true }), (one, q, stoneSizeM) => {
      const { depthM, depthLeastM, depthMostM } = carrying(q, { ...one, stoneSizeM: null });
      expect(depthLeastM).toBeLessThan(depthM);
      expect(depthMostM).toBeGreaterThan(depthM);
      expect(carrying(q, { ...one, stoneSizeM: 1.5 * stoneSizeM }).depthM).toBeGreaterThanOrEqual(carrying(q, { ...one, stoneSizeM }).depthM);
    }),
  );
});

test('what drains back is the length times the section at the most roughness, and the basin rises by it over its surface', () => {
  const { wanted, drainBack } = stream({}, { basin: { surfaceM2: 10, freeboardM: 0.02 } });
  const depth = wanted?.depthMostM ?? 0;
  expect(depth).toBeGreaterThan(0.05);
  expect(drainBack?.volumeM3).toBeCloseTo(6 * (0.6 + depth) * depth, 12);
  expect(drainBack?.riseM).toBeCloseTo((drainBack?.volumeM3 ?? 0) / 10, 12);
});

test('a basin takes what its freeboard holds, to the line, and what it does not take is said', () => {
  const rise = stream({}, { basin: { surfaceM2: 10, freeboardM: 0 } }).drainBack?.riseM ?? 0;
  const takes = (freeboardM: number) => stream({}, { basin: { surfaceM2: 10, freeboardM } });
  expect(takes(rise).drainBack?.basinTakesIt).toBe(true);
  expect(takes(rise * 0.99).drainBack?.basinTakesIt).toBe(false);
  expect(takes(rise * 0.99).warnings.join()).toContain('overflows');
  expect(stream().drainBack).toMatchObject({ riseM: null, basinTakesIt: null });
});

test('a pump gives the stream or falls short, and drains back by the deeper of both', () => {
  const alone = stream({}, { wanted: null, pump: PUMP });
  const pumped = alone.withPump?.flow ?? 0;
  expect([alone.wanted, alone.pumpGivesIt]).toEqual([null, null]);
  const just = stream({}, { wanted: { flowM3PerS: pumped }, pump: PUMP });
  expect(just.pumpGivesIt).toBe(true);
  const more = stream({}, { wanted: { flowM3PerS: pumped * 1.2 }, pump: PUMP });
  expect(more.pumpGivesIt).toBe(false);
  expect(more.warnings.join()).toMatch(/The pump gives .* gpm of the .* gpm needed/);
  expect(more.drainBack?.volumeM3).toBeGreaterThan(alone.drainBack?.volumeM3 ?? Infinity);
});

test('a pump that cannot lift so high gives nothing, and nothing drains back', () => {
  const none = stream({}, { wanted: null, pump: { ...PUMP, system: { ...PUMP.system, staticLiftM: 20 } }, basin: { surfaceM2: 10, freeboardM: 0.1 } });
  expect([none.withPump, none.drainBack]).toEqual([null, null]);
  expect(none.warnings.join()).toContain('do not meet');
});

test('says where the formulas end: steep beds, water among the stones, thin sheets', () => {
  expect(says({ fallM: 0.61 })).toContain('more than 1 in 10');
  expect(says({ fallM: 0.59 })).not.toContain('more than 1 in 10');
  expect(says({ stoneSizeM: 0.05 })).toContain('shallower than 1.5 stones');
  expect(says({ stoneSizeM: 0.02 })).not.toContain('shallower than');
  expect(says({ stoneSizeM: 0.002 }, { wanted: { depthM: 0.6 } })).toContain('over 185 stones deep');
  expect(says({ lining: 'cobble' })).toContain('give the stone size');
  expect(says({ lining: 'cobble' }, { wanted: { depthM: 1.1 } })).not.toContain('give the stone size');
  expect(says({ lining: 'smooth-stone' }, { wanted: { depthM: 0.002 } })).toContain('not fully turbulent');
  expect(says({ lining: 'smooth-stone' })).not.toContain('not fully turbulent');
});

test('names tranquil, wavering and rapid water, and warns of the two that splash or wash the bed away', () => {
  const at = (fallM: number) => stream({ lining: 'smooth-stone', fallM });
  expect([0.003, 0.05, 0.3].map((fallM) => at(fallM).wanted?.regime)).toEqual(['subcritical', 'near-critical', 'supercritical']);
  expect(at(0.003).warnings).toHaveLength(1);
  expect(at(0.05).warnings.join()).toContain('near critical');
  expect(at(0.3).warnings.join()).toContain('supercritical');
  expect(says({ fallM: 0.5 })).toContain('loose gravel may wash away');
  expect(says({ fallM: 0.01 })).not.toContain('wash away');
});

test('the steps give the figures again to anyone with a pocket calculator', () => {
  const { wanted, working } = stream({ stoneSizeM: 0.02 }, { wanted: { flowM3PerS: 0.004 }, basin: { surfaceM2: 10, freeboardM: 0.1 } });
  const value = (label: string): number => Number(working.steps.find((line) => line.label === label)?.value);
  for (const { expression, value: shown } of working.steps.filter(({ label }) => !label.startsWith('depth') && !label.startsWith('roughness'))) {
    expect([expression, calculated(expression)]).toEqual([expression, expect.closeTo(Number(shown), 9)]);
  }
  const [d, n] = [value('mean depth d as wanted'), value('roughness n as wanted')];
  expect(n).toBeCloseTo((0.319 * Math.max(d, 0.03) ** (1 / 6)) / (2.25 + 5.23 * Math.log10(Math.max(d, 0.03) / 0.02)), 12);
  expect(value('flow as wanted')).toBeCloseTo(wanted?.flow ?? 0, 12);
});

/** The arithmetic of a working's line. */
function calculated(expression: string): number {
  const script = expression.replaceAll('×', '*').replaceAll('²', '**2').replaceAll('^', '**').replace(/√\(/g, 'Math.sqrt(').replace(/√([\d.]+)/g, 'Math.sqrt($1)');
  return Number(runInNewContext(script));
}

test('refuse with the place', () => {
  expect(refusals(() => stream({ bottomWidthM: 0 }))).toEqual(['/bottomWidth']);
  expect(refusals(() => stream({ sideSlope: -1 }))).toEqual(['/sideSlope']);
  expect(refusals(() => stream({ lengthM: Number.NaN }))).toEqual(['/length']);
  expect(refusals(() => stream({ fallM: 0 }))).toEqual(['/fall']);
  expect(refusals(() => stream({ fallM: 6 }))).toEqual(['/fall']);
  expect(refusals(() => stream({ stoneSizeM: 0 }))).toEqual(['/stoneSize']);
  expect(refusals(() => stream({ lining: 'smooth-stone', stoneSizeM: 0.1 }))).toEqual(['/stoneSize']);
  expect(refusals(() => stream({}, { wanted: { depthM: 0 } }))).toEqual(['/depth']);
  expect(refusals(() => stream({}, { wanted: { depthM: 6 } }))).toEqual(['/depth']);
  expect(refusals(() => stream({}, { wanted: { flowM3PerS: Number.POSITIVE_INFINITY } }))).toEqual(['/flow']);
  expect(refusals(() => stream({}, { wanted: { flowM3PerS: 1e6 } }))).toEqual(['/flow']);
  expect(refusals(() => stream({}, { wanted: null }))).toEqual(['/depth']);
  expect(refusals(() => stream({}, { pump: { ...PUMP, curve: [] } }))[0]).toMatch(/^\/pump\/curve/);
  expect(refusals(() => stream({}, { basin: { surfaceM2: 0, freeboardM: 0 } }))).toEqual(['/basin/surface']);
  expect(refusals(() => stream({}, { basin: { surfaceM2: 1, freeboardM: -1 } }))).toEqual(['/basin/freeboard']);
});
