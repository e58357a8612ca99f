import fc from 'fast-check';
import { decimal, plain } from '../../src/domain/decimal.js';
import { laborCost, minutesToHours, paidMinutes } from '../../src/domain/worktime/index.js';
import { refusals } from './support.js';

const at = (time: string) => new Date(`2027-04-12T${time}Z`);
const span = (start: string, end: string, unpaidBreakMinutes: number) => {
  return { startedAt: at(start), endedAt: at(end), unpaidBreakMinutes };
};

test('pays the minutes between two instants less the unpaid break, to the second', () => {
  expect(plain(paidMinutes(span('07:00:00', '15:30:00', 30)))).toBe('480');
  expect(plain(paidMinutes(span('07:00:00', '07:00:45', 0)))).toBe('0.75');
});

test('pays nothing for a span that was all break', () => {
  expect(plain(paidMinutes(span('12:00:00', '12:30:00', 30)))).toBe('0');
});

test.each([
  ['an end before the start', span('15:00:00', '07:00:00', 0), '/endedAt'],
  ['an end at the start', span('07:00:00', '07:00:00', 0), '/endedAt'],
  ['a start that is no instant', { ...span('07:00:00', '08:00:00', 0), startedAt: new Date(NaN) }, '/startedAt'],
  ['an end that is no instant', { ...span('07:00:00', '08:00:00', 0), endedAt: new Date(NaN) }, '/endedAt'],
  ['a break longer than the work', span('12:00:00', '12:30:00', 31), '/unpaidBreakMinutes'],
  ['a negative break', span('12:00:00', '12:30:00', -1), '/unpaidBreakMinutes'],
  ['a break that is no number', span('12:00:00', '12:30:00', NaN), '/unpaidBreakMinutes'],
])('refuses %s', (_name, worked, pointer) => {
  expect(refusals(() => paidMinutes(worked))).toEqual([pointer]);
});

test('costs the wage and the burden on it, unrounded', () => {
  expect(plain(laborCost(decimal(480), decimal('28.00'), decimal('22.5')))).toBe('274.4');
  expect(plain(laborCost(decimal(50), decimal('28.01'), decimal(0))).startsWith('23.341666666')).toBe(true);
});

test('costs a day alike whether it is one entry or many', () => {
  const minutes = fc.array(fc.integer({ min: 1, max: 600 }), { minLength: 1, maxLength: 30 });
  fc.assert(
    fc.property(minutes, (list) => {
      const cost = (value: number) => laborCost(decimal(value), decimal('28.17'), decimal('22.5'));
      const many = list.map(cost).reduce((a, b) => a.plus(b));
      const one = cost(list.reduce((a, b) => a + b));
      expect(many.minus(one).abs().lt('1e-30')).toBe(true);
    }),
  );
});

test.each([
  ['minutes', decimal(-1), decimal(1), decimal(1)],
  ['hourlyWage', decimal(1), decimal(-1), decimal(1)],
  ['burdenPercent', decimal(1), decimal(1), decimal(-1)],
])('refuses negative %s', (name, minutes, wage, burden) => {
  expect(refusals(() => laborCost(minutes, wage, burden))).toEqual([`/${name}`]);
});

test('keeps hours of odd minutes exact to far beyond the cent', () => {
  expect(minutesToHours(decimal(20)).toFixed(30)).toBe(`0.${'3'.repeat(30)}`);
});
