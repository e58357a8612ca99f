import fc from 'fast-check';
import { Decimal, plain } from '../../src/domain/decimal.js';
import { DomainError } from '../../src/domain/errors.js';
import { ratioOf, timesRatio } from '../../src/domain/quantity/exact-ratio.js';
import {
  convert,
  displayUnit,
  fromSi,
  isUnit,
  kindOf,
  parseQuantity,
  toSi,
  UNITS,
  unitsOf,
  type Unit,
} from '../../src/domain/quantity/index.js';
import { refusals } from './support.js';

const unit = fc.constantFrom(...UNITS);
const value = fc.double({ min: -1e9, max: 1e9, noNaN: true }).filter((x) => x === 0 || Math.abs(x) > 1e-9);

function closeTo(actual: number, expected: number): boolean {
  return Math.abs(actual - expected) <= 4 * Number.EPSILON * Math.abs(expected);
}

test('comes back from SI within the last bits, whatever the unit', () => {
  fc.assert(fc.property(value, unit, (x, u) => closeTo(fromSi(toSi({ value: x, unit: u }), u), x)));
});

test('comes back from any other unit of its kind within the last bits', () => {
  const pair = unit.chain((from) => fc.tuple(fc.constant(from), fc.constantFrom(...unitsOf(kindOf(from)))));
  fc.assert(fc.property(value, pair, (x, [from, to]) => closeTo(convert(convert(x, from, to), to, from), x)));
});

test('converts straight as it converts over SI', () => {
  const pair = unit.chain((from) => fc.tuple(fc.constant(from), fc.constantFrom(...unitsOf(kindOf(from)))));
  fc.assert(
    fc.property(value, pair, (x, [from, to]) => closeTo(convert(x, from, to), fromSi(toSi({ value: x, unit: from }), to))),
  );
});

test('scales as exact decimals do, rounding once', () => {
  const factors = fc.constantFrom<[string, string]>(['0.3048', '1'], ['0.003785411784', '3600'], ['1', '0.764554857984'], ['907.18474', '1'], ['0.001', '60']);
  const any = fc.oneof(value, fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e30, max: 1e30 }), fc.integer({ min: -100_000, max: 100_000 }).map((x) => x / 100));
  fc.assert(fc.property(any, factors, (x, [times, by]) => timesRatio(x, ratioOf(times, by)) === new Decimal(x).times(times).div(by).toNumber() + 0));
});

test('writes numbers in the digits of their decimals, never with an exponent', () => {
  fc.assert(fc.property(fc.double({ noDefaultInfinity: true }), (x) => plain(x) === new Decimal(x).toFixed()));
  expect([1e21, 1.5e-7, -0, 0.1, 123456789012345680000].map(plain)).toEqual(['1000000000000000000000', '0.00000015', '0', '0.1', '123456789012345680000']);
});

test('knows exactly the units of the contract', () => {
  const contract = 'in ft yd mm cm m ft2 yd2 m2 ft3 yd3 m3 gal L gpm gph L/min m3/h lb ton kg t h each';
  expect([...UNITS].sort()).toEqual(contract.split(' ').sort());
});

test.each(['constructor', 'toString', 'FT', 'sqft', '', ' ft', null, undefined, 3])('takes %j for no unit', (text) => {
  expect(isUnit(text)).toBe(false);
  expect(() => kindOf(text as Unit)).toThrow(DomainError);
});

test('refuses to turn feet into gallons, and lists the units that would do', () => {
  expect(() => convert(1, 'ft', 'gal')).toThrow('use one of in, ft, yd, mm, cm, m.');
});

test.each([NaN, Infinity, -Infinity])('refuses to convert %d', (x) => {
  expect(refusals(() => convert(x, 'ft', 'm'))).toEqual(['']);
  expect(refusals(() => toSi({ value: x, unit: 'ft' }))).toEqual(['/value']);
  expect(refusals(() => fromSi(x, 'ft'))).toEqual(['']);
});

test('reads sediment in cubic yards or meters and water in gallons or liters', () => {
  expect(displayUnit('earth', 'us')).toBe('yd3');
  expect(displayUnit('earth', 'metric')).toBe('m3');
  expect(displayUnit('water', 'us')).toBe('gal');
  expect(displayUnit('water', 'metric')).toBe('L');
});

test('reads a quantity of the asked kind from JSON', () => {
  expect(parseQuantity({ value: 96, unit: 'ft' }, 'length')).toEqual({ value: 96, unit: 'ft' });
});

test.each<[unknown, string[]]>([
  [{ value: 96 }, ['/unit']],
  [{ unit: 'ft' }, ['/value']],
  [{ value: '96', unit: 'ft' }, ['/value']],
  [{ value: 96, unit: 'gal' }, ['/unit']],
  [{ value: null, unit: 'furlong' }, ['/value', '/unit']],
  [{ value: 96, unit: 'ft', 'a/b': 1 }, ['/a~1b']],
  [96, ['']],
  [null, ['']],
  [[96, 'ft'], ['']],
])('refuses %j as a length', (json, pointers) => {
  expect(refusals(() => parseQuantity(json, 'length'))).toEqual(pointers);
});
