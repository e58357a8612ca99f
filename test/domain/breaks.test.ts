import fc from 'fast-check';
import { plain } from '../../src/domain/decimal.js';
import { isShortRest, requireBreaksWithin, unpaidBreakSeconds } from '../../src/domain/worktime/index.js';
import { refusals } from './support.js';

const at = (time: string) => new Date(`2027-04-12T${time}Z`);
const pause = (start: string, end: string, paid = false) => ({ startedAt: at(start), endedAt: at(end), paid });
const work = { startedAt: at('07:00:00'), endedAt: at('15:00:00') };

test('takes a meal off to the millisecond, and neither a paid break nor a rest under 20 minutes', () => {
  expect(plain(unpaidBreakSeconds([pause('12:00:00', '12:30:00.250'), pause('09:00:00', '09:30:00', true), pause('10:00:00', '10:19:59.999')]))).toBe('1800.25');
});

test('counts a rest of 20 minutes as one that may be unpaid', () => {
  // 29 CFR 785.18 says "about 20 minutes"; that 20 itself may be unpaid is common practice.
  expect([isShortRest(pause('10:00:00', '10:19:59')), isShortRest(pause('10:00:00', '10:20:00')), isShortRest(pause('10:00:00', '10:05:00', true))]).toEqual([true, false, false]);
});

test.each([
  ['a break before the work', [pause('06:59:59', '07:30:00')], '/breaks/0/startedAt'],
  ['a break after the work', [pause('14:30:00', '15:00:01')], '/breaks/0/endedAt'],
  ['a break that ends as it starts', [pause('12:00:00', '12:00:00')], '/breaks/0/endedAt'],
  ['a break within another', [pause('12:00:00', '12:30:00'), pause('12:10:00', '12:20:00')], '/breaks/1/startedAt'],
])('refuses %s', (_name, breaks, pointer) => {
  expect(refusals(() => requireBreaksWithin(breaks, work))).toEqual([pointer]);
});

test('takes breaks that touch each other and the ends of the work, and any end while the work runs', () => {
  const breaks = [pause('07:00:00', '12:00:00'), pause('12:00:00', '15:00:00')];
  expect(() => requireBreaksWithin(breaks, work)).not.toThrow();
  expect(() => requireBreaksWithin([pause('12:00:00', '23:00:00')], { ...work, endedAt: null })).not.toThrow();
});

test('never takes more off than the breaks are long, and as much whatever their order', () => {
  const minutes = fc.array(fc.record({ length: fc.integer({ min: 1, max: 90 }), paid: fc.boolean() }), { maxLength: 20 });
  fc.assert(
    fc.property(minutes, (list) => {
      const breaks = list.map(({ length, paid }) => ({ startedAt: work.startedAt, endedAt: new Date(work.startedAt.getTime() + length * 60_000), paid }));
      const seconds = unpaidBreakSeconds(breaks);
      expect(seconds.lte(list.reduce((sum, { length }) => sum + length * 60, 0))).toBe(true);
      expect(seconds.eq(unpaidBreakSeconds(breaks.toReversed()))).toBe(true);
    }),
  );
});
