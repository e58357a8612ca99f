// US Code of Federal Regulations, title 29, part 785 (hours worked).
// V: read there. C: computed here from the rule, no figure of the publisher's. P: our policy where the rule leaves one.
import { decimal } from '../../src/domain/decimal.js';
import { isShortRest, unpaidBreakSeconds } from '../../src/domain/worktime/index.js';
import { cutWork, overtimeIn } from '../../src/domain/worktime/week/index.js';

const at = (minute: number): Date => new Date(Date.UTC(2026, 5, 1, 8, minute));
const pause = (minutes: number, paid = false) => ({ startedAt: at(120), endedAt: at(120 + minutes), paid });

test.each([5, 10, 15, 19])('V: 785.18: a rest of %d minutes is work, even where it was taken down as unpaid', (minutes) => {
  expect([isShortRest(pause(minutes)), unpaidBreakSeconds([pause(minutes)]).toNumber()]).toEqual([true, 0]);
});

test('P: 785.18 says "about 20 minutes": from 20 on a pause that was taken down as unpaid is unpaid', () => {
  expect(unpaidBreakSeconds([pause(20)]).toNumber()).toBe(1_200);
});

test('V: 785.18: rests are not set off against other time: two of 15 minutes do not make a meal of 30', () => {
  expect(unpaidBreakSeconds([pause(15), { startedAt: at(300), endedAt: at(315), paid: false }]).toNumber()).toBe(0);
});

test('V: 785.19: a meal of 30 minutes of which somebody is completely relieved is no work', () => {
  expect(unpaidBreakSeconds([pause(30)]).toNumber()).toBe(1_800);
});

test('V: 785.19: who eats at the machine works: a meal that is taken down as paid counts', () => {
  expect(unpaidBreakSeconds([pause(30, true)]).toNumber()).toBe(0);
});

test('C: 785.48(b): punches are not rounded (P): ten days from 06:53 to 15:37 less 30 minutes are 82 h 20 min, not 80', () => {
  const day = { startedAt: new Date('2026-06-01T10:53:00Z'), endedAt: new Date('2026-06-01T19:37:00Z'), pauses: [], unpaidMinutes: 30 };
  const [piece] = cutWork(day, [Date.parse('2026-06-01T04:00:00Z'), Date.parse('2026-06-02T04:00:00Z')]);
  expect(((piece?.milliseconds ?? 0) * 10) / 3_600_000).toBeCloseTo(82 + 20 / 60, 12);
});

test('V: 785.47: seconds that can be recorded count: half a minute on each of five days is overtime in a week of 40 hours', () => {
  const days = Array.from({ length: 5 }, () => decimal(480.5));
  expect(overtimeIn(days, { weeklyHours: decimal(40), dailyHours: null }, 60).toNumber()).toBe(2.5);
});
