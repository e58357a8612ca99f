import type { DemoSurvey } from './survey.js';

const ft = (value: number): { value: number; unit: 'ft' } => ({ value, unit: 'ft' });
const profile = (...points: readonly (readonly [distance: number, depth: number])[]): NonNullable<DemoSurvey['depthProfile']> => points.map(([distance, depth]) => ({ distance: ft(distance), depth: ft(depth) }));

/** The survey that has everything in it, so that a proposal for its pond has something to say in every scope. */
export const COURT_POND: DemoSurvey = {
  feature: 'aberquill-court', daysAgo: 5, accessFactor: '1.1',
  outline: { shape: 'ellipse', length: ft(20), width: ft(14) },
  probes: { unit: 'in', readings: [{ toSediment: 20, toBottom: 28 }, { toSediment: 22, toBottom: 32 }, { toSediment: 24, toBottom: 34 }, { toSediment: 18, toBottom: 25 }, { toSediment: 21, toBottom: 30 }] },
  findings: ['Liner torn below the waterfall', 'Pump housing cracked by frost', 'Skimmer has no door', 'Boulders on the east side have slid in'],
  depthProfile: profile([0, 0], [0.5, 0.8], [2.5, 1], [2.5, 2], [6, 2.8], [10, 2.6], [11.5, 1.2], [13.5, 0.7], [14, 0]),
  pipeRun: {
    pipes: [{
      side: 'discharge', length: ft(42), innerDiameter: { value: 2.067, unit: 'in' },
      fittings: [{ kind: 'elbow-90', count: 5 }, { kind: 'tee-branch', count: 1 }, { kind: 'ball-valve', count: 1 }, { kind: 'swing-check', count: 1 }, { kind: 'exit', count: 1 }],
    }],
    staticLift: ft(4.5), suctionAt: [1, 7], dischargeAt: [18.5, 6],
  },
  equipmentCondition: [
    { kind: 'pump', condition: 'Housing cracked, does not start', works: 'no' },
    { kind: 'skimmer', condition: 'Door missing, basket sound', works: 'no' },
    { kind: 'light', condition: 'One of two glows', works: 'yes' },
  ],
  reclaimedMaterials: [
    { kind: 'stone', quantity: { value: 2, unit: 'ton' }, note: 'Slid boulders, sound' },
    { kind: 'plants', quantity: { value: 9, unit: 'each' }, note: 'Irises in three clumps, to divide' },
    { kind: 'driftwood', quantity: { value: 1, unit: 'each' }, note: 'Stump beside the waterfall' },
  ],
  waterTests: [{ temperature: { value: 63, unit: 'degF' }, ph: 7.9, totalAmmoniaMgPerL: 0.5, nitriteMgPerL: 0.1, alkalinityMgPerL: 95, oxygenMgPerL: 6.1 }],
};
