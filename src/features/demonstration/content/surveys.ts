import { COURT_POND } from './survey-court-pond.js';
import type { DemoSurvey } from './survey.js';

const ft = (value: number): { value: number; unit: 'ft' } => ({ value, unit: 'ft' });
const ellipse = (length: number, width: number): object => ({ shape: 'ellipse', length: ft(length), width: ft(width) });
const rectangle = (length: number, width: number): object => ({ shape: 'rectangle', length: ft(length), width: ft(width) });

/** Pairs of depths in inches: to the sediment, and to the hard bottom. */
const rod = (...pairs: readonly (readonly [number, number])[]): object => ({ unit: 'in', readings: pairs.map(([toSediment, toBottom]) => ({ toSediment, toBottom })) });

/** Depths in inches at places in the outline's axes. */
const rodAt = (...readings: readonly (readonly [x: number, y: number, toSediment: number, toBottom: number])[]): object => ({
  unit: 'in', readings: readings.map(([x, y, toSediment, toBottom]) => ({ at: [x, y], toSediment, toBottom })),
});

export const SURVEYS: readonly DemoSurvey[] = [
  {
    feature: 'murrow-lily', daysAgo: 250, outline: rectangle(16, 10), accessFactor: '1.2',
    probes: rod([10, 22], [12, 24], [9, 20]), findings: ['Lilies root through the liner', 'No circulation at all'],
  },
  {
    feature: 'strake-back', daysAgo: 82, outline: ellipse(22, 15), accessFactor: '1',
    probes: rod([20, 27], [24, 32], [26, 33], [22, 29], [16, 21]), findings: ['Pump seized', 'Skimmer pad worn through', 'Edge stones loose on the south side'],
  },
  {
    feature: 'larkenby-terrace', daysAgo: 75, accessFactor: '1.25',
    outline: { shape: 'two-stake', unit: 'ft', baseline: 30, ranges: [[5, 26.2], [12.2, 18.1], [21.3, 9.7], [28.5, 9.5], [29.7, 16.8], [26.2, 23.9], [20.2, 28.7], [11.4, 29.2]] },
    probes: rodAt([8, 8, 18, 27], [15, 10, 22, 34], [20, 9, 24, 36], [22, 14, 20, 30], [12, 15, 16, 25]), findings: ['Strong smell when the rod is drawn', 'Old liner patched twice', 'Wall on the north side leans'],
  },
  {
    feature: 'commons-basin', daysAgo: 56, outline: rectangle(18, 12), accessFactor: '1',
    probes: rod([14, 18], [14, 18], [13, 18]), findings: ['Lime on the coping', 'Doser tube split'],
  },
  {
    feature: 'tillotsen-mill', daysAgo: 30, outline: ellipse(30, 20), accessFactor: '1.1',
    probes: rod([26, 36], [30, 42], [34, 44], [28, 37], [22, 30]), findings: ['Inlet choked with roots', 'Filter housing cracked'],
  },
  {
    feature: 'quillfeather-garden', daysAgo: 26, accessFactor: '1.4',
    outline: { shape: 'polygon', unit: 'ft', points: [[0, 3], [4, 0], [10, 0.5], [15, 3], [17, 8], [13, 12], [7, 12.5], [2, 9]] },
    probes: rodAt([5, 4, 12, 17], [10, 5, 14, 20], [12, 9, 13, 18], [6, 9, 11, 16]), findings: ['Too shallow for fish to hide', 'Heron tracks on the ledge'],
  },
  {
    feature: 'brandolph-fish', daysAgo: 20, outline: ellipse(26, 17), accessFactor: '1.15',
    probes: rod([38, 44], [42, 49], [44, 50], [40, 46]), findings: ['Bottom drain blocked', 'Eleven large fish, all well', 'Filter media channelled'],
  },
  {
    feature: 'fennelcote-nature', daysAgo: 15, outline: { shape: 'measured', area: { value: 420, unit: 'ft2' }, perimeter: ft(82) }, accessFactor: '1',
    probes: rod([6, 15], [8, 18], [5, 13], [7, 16]), findings: ['Reed over two thirds of the surface', 'Newts seen: rescue them first'],
  },
  {
    feature: 'tillotsen-upper', daysAgo: 8, outline: ellipse(24, 16), accessFactor: '1.15',
    probes: rod([18, 27], [20, 30], [22, 30], [16, 25]), findings: ['Edge slumped on the field side', 'Clay bottom sound'],
  },
  COURT_POND,
  {
    feature: 'commons-lower', daysAgo: 3, accessFactor: '1',
    outline: { shape: 'polygon', unit: 'ft', points: [[0, 10], [8, 2], [22, 0], [38, 4], [52, 3], [61, 12], [58, 26], [44, 33], [27, 36], [12, 31], [3, 22]] },
    probes: rodAt([10, 12, 18, 34], [24, 10, 24, 44], [40, 12, 30, 50], [52, 14, 22, 35], [40, 24, 28, 45], [24, 26, 24, 40], [12, 22, 16, 30]), findings: ['Road drain brings grit', 'Aerator diffusers half clogged'],
  },
];
