import { DomainError } from '../../src/domain/errors.js';
import { alkalinityDose, concentrationDose, dechlorination, oxygenCautions, oxygenSaturation, saltDose, standardPressureMmHg, unionizedAmmonia, volumeFromSalt } from '../../src/domain/trade/chemistry/index.js';
import { ammoniaFromFeed, biologicalFilter, checkFlowLimits, doserSetting, netWaterM3 } from '../../src/domain/trade/filtration/index.js';
import { fishLoad, fishSeason, larvicideRings, mosquitoBreeding, mosquitoDevelopmentDays, stateAt } from '../../src/domain/trade/life/index.js';
import { barrierCautions, electricalCautions, liftCheck, trenchCautions } from '../../src/domain/trade/safety/index.js';
import { streamFlow } from '../../src/domain/trade/stream/index.js';
import { lipFlow, lookFlow, sheetThickness, waterfall, weirFlow } from '../../src/domain/trade/weir/index.js';

const PUMP = {
  system: { runs: [{ side: 'discharge' as const, innerDiameterM: 0.05, lengthM: 15, hazenWilliamsC: 150, roughnessM: 1.5e-6, fittings: [], otherK: 3 }], staticLiftM: 1.5, vessels: [], waterTemperatureC: 15 },
  curve: [{ flowM3PerS: 0, headM: 6 }, { flowM3PerS: 0.004, headM: 1 }],
};
const BED = { bottomWidthM: 0.6, sideSlope: 1, lengthM: 6, fallM: 0.15, lining: 'gravel' as const, stoneSizeM: 0.02 };
const HANDS = { reachM: 0.3, heightM: 0.7, turnDegrees: 10 };

/** A good call of every function, as the list of its arguments. */
const CALLS = {
  alkalinityDose: [alkalinityDose, [{ volumeM3: 10, presentMgPerL: 40, targetMgPerL: 80, form: 'sodium-bicarbonate', activePercent: 100, mostPerDayMgPerL: 25 }]],
  concentrationDose: [concentrationDose, [10, 2, 50]],
  dechlorination: [dechlorination, [{ addedVolumeM3: 4, chlorineMgPerL: 1, chloramine: true, form: 'ascorbic-acid', reaction: 'sulfate', activePercent: 90 }]],
  oxygenCautions: [oxygenCautions, [5, 9]],
  oxygenSaturation: [oxygenSaturation, [20, 760]],
  saltDose: [saltDose, [10, 0.1, 1]],
  standardPressureMmHg: [standardPressureMmHg, [300]],
  unionizedAmmonia: [unionizedAmmonia, [1, 'nitrogen', 8, 20]],
  volumeFromSalt: [volumeFromSalt, [5, 0.1, 1, 0.1]],
  ammoniaFromFeed: [ammoniaFromFeed, [0.1, 35]],
  biologicalFilter: [biologicalFilter, [{ feedKgPerDay: 0.1, proteinPercent: 35, nitrificationGPerM2Day: 0.3, specificSurfaceM2PerM3: 200, ammoniaLimitMgPerL: 1, removalPercent: 50 }]],
  checkFlowLimits: [checkFlowLimits, [0.003, 10, [{ name: 'skimmer', count: 2, leastM3PerS: 0.001, mostM3PerS: 0.004 }]]],
  doserSetting: [doserSetting, [{ water: { basinM3: 12, displacedM3: 2, besidesM3: 0.3 }, settingStepM3: 0.5, doseM3: 1e-5, doseForM3: 4, everyDays: 1, reservoirM3: 0.002 }]],
  netWaterM3: [netWaterM3, [{ basinM3: 12, displacedM3: 2, besidesM3: 0.3 }]],
  fishLoad: [fishLoad, [{ fishKg: 9, volumeM3: 10, surfaceM2: 18, feedPercentPerDay: 1, proteinPercent: 35, aerated: false, mediaAreaM2: 10, nitrificationGPerM2Day: 0.3 }]],
  fishSeason: [fishSeason, ['koi', [{ label: 'May', celsius: 15 }]]],
  stateAt: [stateAt, ['koi', 15]],
  larvicideRings: [larvicideRings, [16]],
  mosquitoDevelopmentDays: [mosquitoDevelopmentDays, [24]],
  mosquitoBreeding: [mosquitoBreeding, [{ celsius: 24, volumeM3: 10, flowM3PerS: 0.003, zones: [{ name: 'edge', areaM2: 5, moving: false, fish: false, choked: false }] }]],
  barrierCautions: [barrierCautions, [0.5, true]],
  electricalCautions: [electricalCautions, [{ receptacleDistanceM: 3, cordLengthM: 4, submersiblePump: true, metalNearWater: true }]],
  liftCheck: [liftCheck, [{ loadKg: 20, start: HANDS, end: { ...HANDS, heightM: 1 }, liftsPerMinute: 1, duration: 'up-to-1-h', coupling: 'fair' }]],
  trenchCautions: [trenchCautions, [{ depthM: 1.2, soil: 'type-b', spoilDistanceM: 1 }]],
  'streamFlow by depth': [streamFlow, [{ bed: BED, wanted: { depthM: 0.05 }, pump: PUMP, basin: { surfaceM2: 15, freeboardM: 0.1 } }]],
  'streamFlow by flow': [streamFlow, [{ bed: { ...BED, stoneSizeM: null }, wanted: { flowM3PerS: 0.002 }, pump: null, basin: null }]],
  lipFlow: [lipFlow, ['sharp', 0.6, 0.02]],
  lookFlow: [lookFlow, ['sheet', 0.6]],
  sheetThickness: [sheetThickness, ['sharp', 0.6, 0.002]],
  'waterfall by look': [waterfall, [{ lipWidthM: 0.6, lip: 'sharp', wanted: { look: 'sheet' }, pump: PUMP }]],
  'waterfall by thickness': [waterfall, [{ lipWidthM: 0.6, lip: 'sharp', wanted: { thicknessM: 0.02 }, pump: null }]],
  'weirFlow, Kindsvater-Carter': [weirFlow, [{ kind: 'kindsvater-carter', headM: 0.1, crestM: 0.5, channelM: 1, crestHeightM: 0.3, downstreamHeadM: 0.02 }]],
  'weirFlow, notch': [weirFlow, [{ kind: 'v-notch', headM: 0.1, notchDegrees: 60, crestM: null, channelM: null, crestHeightM: null, downstreamHeadM: 0 }]],
  'weirFlow, contracted': [weirFlow, [{ kind: 'contracted', headM: 0.1, crestM: 0.5, channelM: null, crestHeightM: null, downstreamHeadM: 0 }]],
} as unknown as Record<string, [(...input: unknown[]) => unknown, unknown[]]>;

test.each(Object.entries(CALLS))('%s: a number that is none, or out of all reason, is refused with its place or leaves every figure a number', (_, [work, input]) => {
  expect(badNumbers(work(...input))).toEqual([]);
  for (const place of numbersIn(input)) {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1e9, -1, 0, 1e-300, 1e300]) {
      const found = outcome(work, withValue(input, place, value) as unknown[]);
      expect([place.join('/'), value, found]).toEqual([place.join('/'), value, []]);
    }
  }
});

/** The figures that are no numbers, or the refusal without a place. */
function outcome(work: (...input: unknown[]) => unknown, input: unknown[]): string[] {
  try {
    return badNumbers(work(...input));
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return error.violations.filter(({ pointer }) => !pointer.startsWith('/')).map(({ detail }) => `no place: ${detail}`);
  }
}

function badNumbers(result: unknown, at = ''): string[] {
  if (typeof result === 'number') return Number.isFinite(result) ? [] : [`${at}: ${result}`];
  if (typeof result === 'string') return /NaN|Infinity/.test(result) ? [`${at}: ${result}`] : [];
  if (typeof result !== 'object' || result === null) return [];
  return Object.entries(result).flatMap(([key, value]) => badNumbers(value, `${at}/${key}`));
}

function numbersIn(value: unknown): string[][] {
  if (typeof value === 'number') return [[]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner).map((rest) => [key, ...rest]));
}

function withValue(input: unknown, [key, ...deeper]: string[], value: number): unknown {
  if (key === undefined) return value;
  const copy = (Array.isArray(input) ? [...(input as unknown[])] : { ...(input as object) }) as Record<string, unknown>;
  copy[key] = withValue(copy[key], deeper, value);
  return copy;
}
