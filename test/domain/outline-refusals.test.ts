import { measureOutline, parseOutline, type Outline, type Point } from '../../src/domain/trade/index.js';
import { refusals } from './support.js';

const ft = (value: number) => ({ value, unit: 'ft' as const });
const polygon = (points: number[][], unit = 'ft') => ({ shape: 'polygon', unit, points });
const stakes = (ranges: number[][], baseline = 30) => ({ shape: 'two-stake', unit: 'ft', baseline, ranges });

test.each<[name: string, outline: unknown, pointers: string[]]>([
  ['a length of 0', { shape: 'rectangle', length: ft(0), width: ft(5) }, ['/length/value']],
  ['a negative width', { shape: 'ellipse', length: ft(5), width: ft(-5) }, ['/width/value']],
  ['more than 10 km', { shape: 'ellipse', length: { value: 10.001, unit: 'm' }, width: { value: 10_001, unit: 'm' } }, ['/width/value']],
  ['an area for a length', { shape: 'rectangle', length: { value: 5, unit: 'ft2' }, width: ft(5) }, ['/length/unit']],
  ['two wrong fields at once', { shape: 'rectangle', length: ft(0), width: ft(-1) }, ['/length/value', '/width/value']],
  ['a missing width', { shape: 'rectangle', length: ft(3) }, ['/width']],
  ['a misspelt field', { shape: 'rectangle', length: ft(3), widht: ft(3) }, ['/widht']],
  ['an unknown shape', { shape: 'kidney' }, ['/shape']],
  ['no shape', {}, ['/shape']],
  ['no object', 'ellipse', ['']],
  ['null', null, ['']],
  ['a list', [], ['']],
  ['two points', polygon([[0, 0], [1, 0]]), ['/points']],
  ['no points', polygon([]), ['/points']],
  ['two points and the first again', polygon([[0, 0], [1, 0], [0, 0]]), ['/points']],
  ['the same point twice running', polygon([[0, 0], [5, 0], [5, 0], [5, 5]]), ['/points/2']],
  ['a closing point given twice', polygon([[0, 0], [5, 0], [5, 5], [0, 0], [0, 0]]), ['/points/3']],
  ['a bow tie', polygon([[0, 0], [10, 10], [10, 0], [0, 10]]), ['/points/3']],
  ['a bow tie entered closed', polygon([[0, 0], [10, 10], [10, 0], [0, 10], [0, 0]]), ['/points/3']],
  ['a crossing by the closing edge', polygon([[0, 0], [10, 0], [10, 10], [5, -5]]), ['/points/3']],
  ['a corner that touches an edge', polygon([[0, 0], [10, 0], [10, 10], [5, 0], [0, 10]]), ['/points/3']],
  ['a corner that touches an edge, walked the other way', polygon([[0, 10], [5, 0], [10, 10], [10, 0], [0, 0]]), ['/points/4']],
  ['two corners that meet in a waist', polygon([[0, 0], [10, 0], [10, 2], [5, 5], [10, 8], [10, 10], [0, 10], [0, 8], [5, 5], [0, 2]]), ['/points/8']],
  ['a corner used twice', polygon([[0, 0], [4, 4], [8, 0], [8, 8], [4, 4], [0, 8]]), ['/points/4']],
  ['points on one line', polygon([[0, 0], [5, 5], [10, 10]]), ['/points/0']],
  ['a spike', polygon([[0, 0], [10, 0], [10, 10], [10, 4], [0, 10]]), ['/points/2']],
  ['an edge along another', polygon([[0, 0], [10, 0], [10, 5], [8, 5], [8, 0], [3, 0], [0, 5]]), ['/points/4']],
  ['three coordinates', polygon([[0, 0], [1, 0], [1, 1, 1]]), ['/points/2']],
  ['a coordinate in a string', { ...polygon([[0, 0], [1, 0]]), points: [[0, 0], [1, 0], [1, '1']] }, ['/points/2']],
  ['a point 11 km away', polygon([[0, 0], [11_000, 0], [0, 5]], 'm'), ['/points/1']],
  ['a unit of area', polygon([[0, 0], [1, 0], [1, 1]], 'ft2'), ['/unit']],
  ['no list', { shape: 'polygon', unit: 'ft', points: 'abc' }, ['/points']],
  ['2,002 points', polygon(Array.from({ length: 2_002 }, (_, i) => [i, i * i])), ['/points']],
  ['2,001 points, none of them a closing one', polygon(Array.from({ length: 2_001 }, (_, i) => [i / 1_000, (i * i) / 1_000_000])), ['/points']],
  ['2,001 ranges', stakes(Array.from({ length: 2_001 }, (_, i) => [20 + i / 1_000, 20])), ['/ranges']],
  ['tapes that do not meet', stakes([[20, 20], [10, 10], [25, 25]]), ['/ranges/1']],
  ['tapes that differ by more than the baseline', stakes([[20, 20], [25, 20], [50, 10]]), ['/ranges/2']],
  ['a negative tape distance', stakes([[20, 20], [25, 20], [-20, 25]]), ['/ranges/2']],
  ['two ranges', stakes([[20, 20], [25, 20]]), ['/ranges']],
  ['the same range twice running', stakes([[20, 20], [20, 20], [25, 20]]), ['/ranges/1']],
  ['stakes at one place', stakes([[20, 20], [25, 20], [20, 25]], 0), ['/baseline']],
  ['a baseline in a string', { ...stakes([[20, 20]]), baseline: '30' }, ['/baseline']],
  ['more area than the perimeter can hold', { shape: 'measured', area: { value: 100, unit: 'ft2' }, perimeter: ft(35) }, ['/area']],
  ['a perimeter of 0', { shape: 'measured', area: { value: 100, unit: 'ft2' }, perimeter: ft(0) }, ['/perimeter/value']],
  ['a length for an area', { shape: 'measured', area: ft(5), perimeter: ft(35) }, ['/area/unit']],
])('refuses %s', (_name, outline, pointers) => {
  expect(refusals(() => parseOutline(outline))).toEqual(pointers);
});

test('refuses a two-stake outline that crosses itself, at the range that does it', () => {
  const points = [[5, 5], [25, 25], [25, 5], [5, 25]];
  const ranges = points.map(([x = 0, y = 0]) => [Math.sqrt(x * x + y * y), Math.sqrt((x - 30) ** 2 + y * y)]);
  expect(refusals(() => parseOutline(stakes(ranges)))).toEqual(['/ranges/3']);
});

test('refuses numbers that are none, which JSON cannot carry but code can', () => {
  const nowhere: Point[] = [[0, 0], [NaN, 0], [1, 1]];
  expect(refusals(() => measureOutline({ shape: 'polygon', unit: 'ft', points: nowhere }))).toEqual(['/points/1']);
  expect(refusals(() => measureOutline({ shape: 'rectangle', length: ft(Infinity), width: ft(1) }))).toEqual(['/length/value']);
});

test.each<[string, Outline]>([
  ['a rectangle', { shape: 'rectangle', length: ft(96), width: { value: 120, unit: 'in' } }],
  ['an ellipse', { shape: 'ellipse', length: ft(24), width: ft(16) }],
  ['a triangle', { shape: 'polygon', unit: 'yd', points: [[0, 0], [3, 0], [0, 4]] }],
  ['a range on the baseline itself', { shape: 'two-stake', unit: 'm', baseline: 0.9, ranges: [[0.3, 0.6], [0.6, 0.3], [1, 1]] }],
  ['a circle by its figures', { shape: 'measured', area: { value: Math.PI * 9, unit: 'm2' }, perimeter: { value: Math.PI * 6, unit: 'm' } }],
])('reads %s from JSON as it was written', (_name, outline) => {
  expect(parseOutline(JSON.parse(JSON.stringify(outline)))).toEqual(outline);
});

test('takes 2,000 points and the first again', () => {
  const circle = Array.from({ length: 2_000 }, (_, i): Point => {
    return [Math.cos((Math.PI * i) / 1_000), Math.sin((Math.PI * i) / 1_000)];
  });
  const closed = parseOutline({ shape: 'polygon', unit: 'm', points: [...circle, circle[0]] });
  expect(measureOutline(closed).areaM2).toBeCloseTo(Math.PI, 4);
});
