export const SPECIES = ['koi', 'goldfish', 'yellow-perch', 'bluegill', 'channel-catfish', 'rainbow-trout', 'tilapia'] as const;
export type Species = (typeof SPECIES)[number];

/**
 * Water temperatures in °C that part a species' year: below `feedFrom` it should get no feed, below `growFrom` little,
 * from `bestFrom` to `bestTo` it grows best, above `stressAbove` it suffers, at `diesAtHeat` and `diesAtCold` it dies
 * within days. `source` says where each comes from, as nobody should take a figure from memory for a read one.
 */
export interface SpeciesRange {
  readonly edible: boolean;
  readonly diesAtCold: number | null;
  readonly feedFrom: number;
  readonly growFrom: number;
  readonly bestFrom: number;
  readonly bestTo: number;
  readonly stressAbove: number;
  readonly diesAtHeat: number;
  readonly source: string;
}

const fahrenheit = (value: number): number => (value - 32) / 1.8;

const CARP_KIN: Omit<SpeciesRange, 'source'> = {
  edible: false, diesAtCold: null, feedFrom: fahrenheit(50), growFrom: fahrenheit(60), bestFrom: 18, bestTo: 26, stressAbove: 30, diesAtHeat: 35,
};

export const SPECIES_RANGES: Readonly<Record<Species, SpeciesRange>> = {
  koi: { ...CARP_KIN, source: 'Common practice: no feed below 50 degF, easily digested feed below 60 degF; best, stress and lethal temperatures from memory.' },
  goldfish: { ...CARP_KIN, source: 'Common practice: no feed below 50 degF, easily digested feed below 60 degF; best, stress and lethal temperatures from memory.' },
  'yellow-perch': {
    edible: true, diesAtCold: null, feedFrom: fahrenheit(45), growFrom: fahrenheit(50), bestFrom: fahrenheit(73), bestTo: fahrenheit(77), stressAbove: fahrenheit(79), diesAtHeat: 30,
    source: 'North Central Regional Aquaculture Center white paper, 2003 (read, as quoted): best 73 to 77 degF, little growth below 50, stress above 79. Feeding and lethal temperatures from memory.',
  },
  bluegill: {
    edible: true, diesAtCold: null, feedFrom: 10, growFrom: 15, bestFrom: 25, bestTo: 31, stressAbove: 33, diesAtHeat: 36,
    source: 'Growth rates of juvenile bluegill (journal abstract, read): alike from 25 to 31 degC, less at 34. The others from memory.',
  },
  'channel-catfish': {
    edible: true, diesAtCold: null, feedFrom: 12, growFrom: 21, bestFrom: 26, bestTo: 29, stressAbove: 32, diesAtHeat: 33.5,
    source: 'US Fish and Wildlife Service habitat suitability model (read): best 26 to 29 degC, poor growth below 21, none below 18, lethal 33.5 for fish used to 25. Feeding and stress temperatures from memory.',
  },
  'rainbow-trout': {
    edible: true, diesAtCold: null, feedFrom: 4, growFrom: 7, bestFrom: 13.1, bestTo: 19, stressAbove: 19, diesAtHeat: 26.2,
    source: 'Nevada draft thermal tolerance review, 2015 (read): best 13.1 to 19 degC, chronic limit 19; ultimate lethal temperature 26.2 degC (Progressive Fish-Culturist 40, 1978, abstract read). Feeding temperatures from memory.',
  },
  tilapia: {
    edible: true, diesAtCold: fahrenheit(52), feedFrom: fahrenheit(63), growFrom: fahrenheit(72), bestFrom: fahrenheit(85), bestTo: fahrenheit(88), stressAbove: 35, diesAtHeat: 41,
    source: 'SRAC fact sheet on the life history of tilapia (read): best 85 to 88 degF, a third of it at 72, no feeding below 63, death at 50 to 52. Upper temperatures from memory.',
  },
};
