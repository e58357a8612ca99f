/** An input that a calculation admits and that gives it the most to do. */
interface LargeInput {
  readonly what: string;
  readonly input: object;
  /** Where a survey or a catalog may be this large: their own targets. CPU ms. */
  readonly targetMs?: number;
}

const POINTS = 2_000;
const READINGS = 5_000;
const TURN = 2.399963229728653;
const ft = (value: number): object => ({ value, unit: 'ft' });
const gpm = (value: number): object => ({ value, unit: 'gpm' });
const list = <T>(length: number, of: (i: number) => T): T[] => Array.from({ length }, (_, i) => of(i));

/** A pond with bays. */
const ROUND: [number, number][] = list(POINTS, (i) => {
  const turn = (2 * Math.PI * i) / POINTS;
  const radius = 40 + 3 * Math.sin(7 * turn);
  return [radius * Math.cos(turn), radius * Math.sin(turn)];
});
/** A comb turned by an angle: up and down without end and back beside it, every edge as high as the whole. */
const zigzag = (angle: number): [number, number][] =>
  list(POINTS, (i): [number, number] => {
    const tooth = i < POINTS / 2 ? i : POINTS - 1 - i;
    const [x, y] = [(tooth * 80) / POINTS, (tooth % 2 === 0 ? 0 : 60) + (i < POINTS / 2 ? 0 : 0.05)];
    return [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)];
  });
const polygon = (points: [number, number][]): object => ({ shape: 'polygon', unit: 'ft', points });
/** A sunflower's places, all different. */
const probes = (count: number): object => ({
  unit: 'in',
  readings: list(count, (i) => {
    const radius = 36 * Math.sqrt(i / count);
    return { at: [radius * Math.cos(TURN * i), radius * Math.sin(TURN * i)], toSediment: 10 + (i % 13), toBottom: 23 + (i % 17) };
  }),
});
/** As printed: tenths of a gpm, hundredths of a foot. */
const curve = (i: number, points: number): object[] =>
  list(points, (j) => {
    const share = j / (points - 1);
    return { flow: gpm(Math.round(share * (40 + ((i * 37) % 100)) * 10) / 10), head: ft(Math.round((20 + ((i * 17) % 50)) * (1 - share * share) * 100) / 100) };
  });
const pumps = (points: number): object[] => list(500, (i) => ({ name: `P ${i}`, curve: curve(i, points), powerWatts: 600 + i, price: { amount: `${199 + i}.00`, currency: 'USD' } }));
const ranking = (points: number): object => ({ system, wantedFlow: gpm(30), electricityRate: '0.16', pumps: pumps(points) });
const system = {
  runs: list(50, (i) => ({ side: i < 5 ? 'suction' : 'discharge', innerDiameter: { value: 2.067 + (i % 3), unit: 'in' }, length: ft(2 + i / 10), fittings: [{ kind: 'elbow-90', count: 1 + (i % 3) }] })),
  staticLift: ft(8),
  vessels: list(20, (i) => ({ name: `vessel ${i}`, flow: gpm(50), head: ft(0.05) })),
};
const rolls = (priced: boolean): object[] => list(20, (i) => ({ name: `roll ${i}`, width: { value: 0.6 + i / 37, unit: 'm' }, length: { value: 3 + i, unit: 'm' }, ...(priced ? { price: { amount: (1 + i / 100).toFixed(2), currency: 'USD' }, pricePer: i % 2 === 0 ? 'roll' : 'ft2' } : {}) }));
const bySheet = (priced: boolean): object => ({ length: { value: 100, unit: 'm' }, width: { value: 100, unit: 'm' }, rolls: rolls(priced), seamOverlap: { value: 0, unit: 'm' } });
const inPond = { edge: 'nearest' };
const profile = list(50, (i) => ({ drop: { value: 1, unit: 'in' }, run: { value: i % 3, unit: 'in' } }));

/** By the name of the calculation. */
export const LARGEST_INPUTS: Readonly<Record<string, readonly LargeInput[]>> = {
  'sediment-by-place': [
    { what: '40 readings in 2,000 points', input: { outline: polygon(ROUND), probes: probes(40), ...inPond } },
    { what: '300 readings in 40 points', input: { outline: polygon(ROUND.filter((_, i) => i % 50 === 0)), probes: probes(300), ...inPond } },
    { what: '5,000 readings in 2,000 points', input: { outline: polygon(ROUND), probes: probes(READINGS), ...inPond }, targetMs: 50 },
  ],
  'section-volume': [{ what: '100 sections', input: { sections: list(100, (i) => ({ at: ft(i / 3), area: { value: 9_000 - i * i * 0.7, unit: 'ft2' } })) } }],
  'liner-sheet': [
    { what: 'outline of 2,000 points', input: { outline: polygon(ROUND), profile } },
    { what: 'zigzag of 2,000 points', input: { outline: polygon(zigzag(0)), profile } },
    { what: 'zigzag of 2,000 points, aslant', input: { outline: polygon(zigzag(0.7)), profile } },
  ],
  'liner-cut': [
    { what: '20 rolls with prices', input: bySheet(true) },
    { what: '20 rolls without prices', input: bySheet(false) },
  ],
  'short-circuiting': [{ what: 'outline of 2,000 points', input: { outline: polygon(ROUND), distance: ft(9) } }],
  'pump-ranking': [
    { what: '500 pumps of 12 points on 50 runs', input: ranking(12), targetMs: 50 },
    { what: '500 pumps of 100 points on 50 runs', input: ranking(100), targetMs: 50 },
  ],
  'circulation-loop': [{ what: '50 runs', input: { system, pump: { curve: curve(3, 100), powerWatts: 500 }, waterVolume: { value: 5000, unit: 'gal' } } }],
  waterfall: [{ what: '50 runs', input: { lipWidth: { value: 24, unit: 'in' }, lip: 'flat-stone', look: 'sheet', system, pump: { curve: curve(3, 100) } } }],
  'reclaimed-stone': [{ what: '100 sizes', input: { piles: list(100, (i) => ({ length: { value: 12 + i / 10, unit: 'in' }, width: { value: 10, unit: 'in' }, height: { value: 8, unit: 'in' }, form: 'rounded', count: 1 + i })), needed: { value: 20, unit: 'ton' } } }],
  'net-water': [{ what: '100 stones and 100 beds', input: { waterVolume: { value: 50_000, unit: 'gal' }, stone: list(100, () => ({ mass: { value: 0.1, unit: 'ton' }, submergedPercent: 50 })), gravel: list(100, () => ({ volume: { value: 1, unit: 'ft3' } })) } }],
};
