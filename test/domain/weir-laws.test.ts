import fc from 'fast-check';
import { LIP_KINDS, lipFlow, LOOK_NAMES, lookFlow, sheetThickness, WEIR_KINDS, weirFlow, type WeirInput } from '../../src/domain/trade/weir/index.js';

/** Any kind within its range: the head at most a third of the crest. */
const weir: fc.Arbitrary<WeirInput> = fc
  .record({ kind: fc.constantFrom(...WEIR_KINDS), headM: fc.double({ min: 0.01, max: 0.3, noNaN: true }), crestM: fc.double({ min: 1, max: 3, noNaN: true }), wider: fc.double({ min: 1, max: 4, noNaN: true }), notchDegrees: fc.double({ min: 25, max: 90, noNaN: true }) })
  .map(({ wider, crestM, ...rest }) => ({ ...rest, crestM, channelM: crestM * wider, crestHeightM: 0.5, downstreamHeadM: 0 }));
const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
const flow = (input: WeirInput): number => weirFlow(input).flowM3PerS;

test('more head, a longer crest in its channel and a wider notch give more flow', () => {
  fc.assert(
    fc.property(weir, (input) => {
      expect(flow({ ...input, headM: input.headM * 1.05 })).toBeGreaterThan(flow(input));
      if (input.kind.startsWith('v-notch')) {
        if (input.kind === 'v-notch') expect(flow({ ...input, notchDegrees: (input.notchDegrees ?? 0) * 1.1 })).toBeGreaterThan(flow(input));
      } else expect(flow({ ...input, crestM: (input.crestM ?? 0) * 1.1, channelM: (input.channelM ?? 0) * 1.1 })).toBeGreaterThan(flow(input));
    }),
  );
});

test('a drowned weir gives less than a free one, and the less the more it is drowned', () => {
  fc.assert(
    fc.property(weir, share, share, (input, one, other) => {
      const drowned = (part: number): number => flow({ ...input, downstreamHeadM: input.headM * part });
      expect(drowned(one)).toBeLessThanOrEqual(flow(input));
      expect(drowned(Math.max(one, other))).toBeLessThanOrEqual(drowned(Math.min(one, other)));
    }),
  );
});

test('two lips side by side carry what one of their whole width does, and the sheet is the same', () => {
  fc.assert(
    fc.property(fc.constantFrom(...LIP_KINDS), share, share, fc.double({ min: 0.002, max: 0.2, noNaN: true }), (lip, left, right, thicknessM) => {
      const whole = lipFlow(lip, left + right, thicknessM);
      expect((lipFlow(lip, left, thicknessM) + lipFlow(lip, right, thicknessM)) / whole).toBeCloseTo(1, 12);
      expect(sheetThickness(lip, left + right, whole) / thicknessM).toBeCloseTo(1, 12);
    }),
  );
});

test('a look makes the same sheet on any width, and stone wants a thicker one', () => {
  fc.assert(
    fc.property(fc.constantFrom(...LOOK_NAMES), share, share, (look, one, other) => {
      const sheet = (width: number): number => sheetThickness('sharp', width, lookFlow(look, width));
      expect(sheet(one) / sheet(other)).toBeCloseTo(1, 12);
      expect(sheetThickness('flat-stone', one, lookFlow(look, one))).toBeGreaterThan(sheet(one));
    }),
  );
});
