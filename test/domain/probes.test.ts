import { parseProbes, takeoff, type Outline, type ProbeReading } from '../../src/domain/trade/index.js';
import { refusals } from './support.js';

const square: Outline = { shape: 'polygon', unit: 'ft', points: [[0, 0], [20, 0], [20, 20], [0, 20]] };
const ok = { toSediment: 18, toBottom: 27 };
const readings = (...list: unknown[]) => ({ unit: 'in', readings: list });

test.each<[name: string, probes: unknown, pointers: string[]]>([
  ['a bottom above the sediment', readings(ok, ok, ok, { toSediment: 27, toBottom: 18 }), ['/readings/3/toBottom']],
  ['every wrong reading at once', readings({ toSediment: 2, toBottom: 1 }, ok, { toSediment: 2, toBottom: 1 }), ['/readings/0/toBottom', '/readings/2/toBottom']],
  ['a negative depth', readings({ toSediment: -1, toBottom: 4 }), ['/readings/0/toSediment']],
  ['two negative depths', readings({ toSediment: -2, toBottom: -1 }), ['/readings/0/toSediment', '/readings/0/toBottom']],
  ['more than 30 m', readings({ toSediment: 1, toBottom: 1_182 }), ['/readings/0/toBottom']],
  ['no readings', readings(), ['/readings']],
  ['5,001 readings', readings(...Array.from({ length: 5_001 }, () => ok)), ['/readings']],
  ['a depth in a string', readings({ toSediment: '18', toBottom: 27 }), ['/readings/0/toSediment']],
  ['a missing depth', readings({ toSediment: 18 }), ['/readings/0/toBottom']],
  ['a misspelt depth', readings({ ...ok, toBotom: 1 }), ['/readings/0/toBotom']],
  ['a place of one number', readings({ ...ok, at: [1] }), ['/readings/0/at']],
  ['a unit of volume', { unit: 'gal', readings: [ok] }, ['/unit']],
  ['no unit', { readings: [ok] }, ['/unit']],
  ['no list', { unit: 'in', readings: {} }, ['/readings']],
  ['null', null, ['']],
])('refuses %s', (_name, probes, pointers) => {
  expect(refusals(() => parseProbes(probes))).toEqual(pointers);
});

test('names the first twenty wrong readings of a sheet with swapped columns, not all', () => {
  const swapped = Array.from({ length: 5_000 }, () => ({ toSediment: 27, toBottom: 18 }));
  expect(refusals(() => parseProbes(readings(...swapped)))).toHaveLength(20);
});

test('reads probes from JSON, a place being there, missing or null', () => {
  const json = readings({ at: [1, 2], ...ok }, ok, { at: null, ...ok });
  expect(parseProbes(json)).toEqual({ unit: 'in', readings: [{ at: [1, 2], ...ok }, ok, ok] });
});

test('takes 30 m and a bottom level with the sediment', () => {
  const edge = { unit: 'm', readings: [{ toSediment: 30, toBottom: 30 }, { toSediment: 0, toBottom: 0 }] };
  expect(parseProbes(edge).readings).toHaveLength(2);
});

test('points a takeoff refusal below the survey', () => {
  const probes = { unit: 'in' as const, readings: [ok, { toSediment: 3, toBottom: 2 }] };
  expect(refusals(() => takeoff({ outline: square, probes }))).toEqual(['/probes/readings/1/toBottom']);
  const crossed: Outline = { shape: 'polygon', unit: 'ft', points: [[0, 0], [10, 10], [10, 0], [0, 10]] };
  expect(refusals(() => takeoff({ outline: crossed, probes: null }))).toEqual(['/outline/points/3']);
});

function warningsFor(outline: Outline, ...places: [number, number][]): string[] {
  const list = places.map((at): ProbeReading => ({ at, ...ok }));
  return takeoff({ outline, probes: { unit: 'in', readings: list } }).warnings;
}

test('warns of readings outside the outline and still counts them', () => {
  const [warning, ...more] = warningsFor(square, [10, 10], [21, 10], [5, 5], [10, -3], [10, 100]);
  expect(warning).toContain('counted from 0: 1, 3, 4.');
  expect(more).toEqual([]);
});

test('names ten stray readings and counts the rest', () => {
  const strays = Array.from({ length: 14 }, (_, i): [number, number] => [30 + i, 10]);
  expect(warningsFor(square, ...strays)[0]).toContain('7, 8, 9 and 4 more');
});

test('does not warn of readings inside, on the shore, at a corner or a hand\'s width off it', () => {
  expect(warningsFor(square, [1, 1], [0, 10], [20, 20], [10, 20.1])).toEqual([]);
});

test('knows the inside of a bay from the outside', () => {
  const bay: Outline = { shape: 'polygon', unit: 'ft', points: [[0, 0], [30, 0], [30, 30], [20, 30], [20, 10], [10, 10], [10, 30], [0, 30]] };
  expect(warningsFor(bay, [5, 20], [25, 20], [15, 5])).toEqual([]);
  expect(warningsFor(bay, [15, 20])).toHaveLength(1);
});

test('has no axes to place readings in for an ellipse', () => {
  const ellipse: Outline = { shape: 'ellipse', length: { value: 5, unit: 'ft' }, width: { value: 5, unit: 'ft' } };
  expect(warningsFor(ellipse, [1_000, 1_000])).toEqual([]);
});
