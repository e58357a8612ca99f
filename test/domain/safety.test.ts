import fc from 'fast-check';
import {
  barrierCautions, COUPLINGS, DISCHARGE_PLACES, dischargeCautions, electricalCautions, LIFT_DURATIONS, liftCheck, SOILS, trenchCautions, waterSupplyCautions,
  type Caution, type HandPosition, type LiftInput,
} from '../../src/domain/trade/safety/index.js';
import { refusals } from './support.js';

const length = fc.double({ min: 0, max: 3, noNaN: true });
const unknownOr = (values: fc.Arbitrary<number>): fc.Arbitrary<number | null> => fc.option(values);
const hands: fc.Arbitrary<HandPosition> = fc.record({ reachM: length, heightM: length, turnDegrees: fc.integer({ min: 0, max: 180 }) });
const lift: fc.Arbitrary<LiftInput> = fc.record({
  loadKg: fc.double({ min: 0.5, max: 500, noNaN: true }),
  start: hands,
  end: hands,
  liftsPerMinute: fc.double({ min: 0, max: 20, noNaN: true }),
  duration: fc.constantFrom(...LIFT_DURATIONS),
  coupling: fc.constantFrom(...COUPLINGS),
});

const anyChecked: fc.Arbitrary<Caution[]> = fc.oneof(
  lift.map((input) => liftCheck(input).cautions),
  fc.record({ depthM: fc.double({ min: 0.01, max: 10, noNaN: true }), soil: fc.constantFrom(...SOILS), spoilDistanceM: unknownOr(length) }).map((input) => trenchCautions(input).cautions),
  fc.tuple(length, fc.boolean()).map(([depth, children]) => barrierCautions(depth, children).cautions),
  fc
    .record({ receptacleDistanceM: unknownOr(fc.double({ min: 0, max: 30, noNaN: true })), cordLengthM: unknownOr(fc.double({ min: 0, max: 30, noNaN: true })), submersiblePump: fc.boolean(), metalNearWater: fc.boolean() })
    .map((input) => electricalCautions(input).cautions),
  fc
    .record({ to: fc.constantFrom(...DISCHARGE_PLACES), turbid: fc.boolean(), chlorinated: fc.boolean(), salted: fc.boolean(), treated: fc.boolean(), livingThings: fc.boolean() })
    .map((input) => dischargeCautions(input).cautions),
  fc.record({ drinkingWater: fc.boolean(), autoFill: fc.boolean(), sharedPipe: fc.boolean() }).map((input) => waterSupplyCautions(input).cautions),
);

test('every check warns of something, defers to local code at its end, and permits nothing', () => {
  fc.assert(
    fc.property(anyChecked, (cautions) => {
      expect(cautions.length).toBeGreaterThan(1);
      expect(cautions.at(-1)?.text).toMatch(/not permission\. Local code and .* decide/);
      for (const { text, source } of cautions) {
        expect(text).not.toMatch(/\b(is|are) (safe|ok|fine|permitted)\b|no (barrier|permit|protection) (is )?(needed|required)/i);
        expect(source).not.toBe('');
      }
    }),
    { numRuns: 500 },
  );
});

test('the limit of a lift is the same one way and the other, and never above the load constant', () => {
  fc.assert(
    fc.property(lift, (input) => {
      const [one, other] = [liftCheck(input), liftCheck({ ...input, start: input.end, end: input.start })];
      expect(other.liftingIndex).toBe(one.liftingIndex);
      expect(Math.max(one.startLimitKg, one.endLimitKg)).toBeLessThanOrEqual(51 * 0.45359237 + 1e-9);
    }),
  );
});

test('reaching farther, turning more and lifting more often never raise the limit', () => {
  fc.assert(
    fc.property(lift, fc.double({ min: 0, max: 1, noNaN: true }), (input, more) => {
      const limit = (changed: Partial<LiftInput>): number => liftCheck({ ...input, ...changed }).startLimitKg;
      expect(limit({ start: { ...input.start, reachM: input.start.reachM + more } })).toBeLessThanOrEqual(limit({}));
      expect(limit({ start: { ...input.start, turnDegrees: Math.min(180, input.start.turnDegrees + 45 * more) } })).toBeLessThanOrEqual(limit({}));
      expect(limit({ liftsPerMinute: input.liftsPerMinute + more })).toBeLessThanOrEqual(limit({}));
    }),
  );
});

test('recommends no weight at all beyond 25 in of reach, and warns of three times the limit', () => {
  const easy: LiftInput = { loadKg: 10, start: { reachM: 0.3, heightM: 0.7, turnDegrees: 0 }, end: { reachM: 0.3, heightM: 0.8, turnDegrees: 0 }, liftsPerMinute: 0.2, duration: 'up-to-1-h', coupling: 'good' };
  const far = liftCheck({ ...easy, end: { ...easy.end, reachM: 0.64 } });
  expect([far.endLimitKg, far.liftingIndex]).toEqual([0, null]);
  expect(far.cautions[0]?.text).toMatch(/no weight at all/);
  expect(liftCheck({ ...easy, loadKg: 80 }).cautions[0]?.text).toMatch(/three times/);
  expect(liftCheck({ ...easy, loadKg: 30 }).cautions[0]?.text).toMatch(/More than the recommended weight/);
  expect(liftCheck(easy).cautions[0]?.text).toMatch(/does not cover wet/);
  expect(refusals(() => liftCheck({ ...easy, loadKg: 0 }))).toEqual(['/load']);
});

test('a trench asks for protection from 5 ft, a ladder from 4 ft, an engineer beyond 20 ft', () => {
  const says = (feet: number): string => trenchCautions({ depthM: feet * 0.3048, soil: 'type-c', spoilDistanceM: 1 }).cautions.map(({ text }) => text).join('\n');
  expect(says(5)).toMatch(/Nobody enters before it stands/);
  expect(says(4.99)).not.toMatch(/Nobody enters/);
  expect(says(4)).toMatch(/ladder/);
  expect(says(3.99)).not.toMatch(/ladder/);
  expect(says(20.01)).toMatch(/professional engineer/);
  expect(says(3)).not.toMatch(/2 ft \(0\.61 m\) from the edge/);
  expect(trenchCautions({ depthM: 2, soil: 'unknown', spoilDistanceM: null }).slopeBackM).toBe(3);
});

test('open water warns at any depth, and names 24 in and 18 in', () => {
  const says = (inches: number): string => barrierCautions(inches * 0.0254, false).cautions.map(({ text }) => text).join('\n');
  expect(says(24)).toMatch(/24 in \(0\.61 m\) or more/);
  expect(says(18)).toMatch(/From 18 in/);
  expect(says(2)).toMatch(/no depth is harmless/);
});

test('what is not known about a receptacle counts as near', () => {
  const says = (receptacleDistanceM: number | null): string => electricalCautions({ receptacleDistanceM, cordLengthM: 4, submersiblePump: true, metalNearWater: true }).cautions.map(({ text }) => text).join('\n');
  expect(says(null)).toMatch(/nearer than 6 ft[^]*within 20 ft[^]*10 ft[^]*low-water[^]*bonding/);
  expect(says(7)).not.toMatch(/nearer than 6 ft/);
});

test('turbid, chlorinated or salted water is kept out of drains and streams in so many words', () => {
  const bad = { turbid: true, chlorinated: true, salted: true, treated: true, livingThings: true };
  const toStream = dischargeCautions({ to: 'stream-or-lake', ...bad }).cautions.map(({ text }) => text);
  expect(toStream.filter((text) => text.includes('never pump it to a storm drain or stream'))).toHaveLength(3);
  expect(dischargeCautions({ to: 'own-ground', ...bad }).cautions).toHaveLength(7);
});

test('water that people drink is guarded from the pond, whatever fills it', () => {
  const says = (drinkingWater: boolean, sharedPipe: boolean): string => waterSupplyCautions({ drinkingWater, autoFill: true, sharedPipe }).cautions.map(({ text }) => text).join('\n');
  expect(says(true, true)).toMatch(/air gap[^]*must not be joined to the public supply[^]*dechlorinate[^]*lead-free[^]*hides a leak/);
  expect(says(false, false)).not.toMatch(/air gap|lead-free/);
});
