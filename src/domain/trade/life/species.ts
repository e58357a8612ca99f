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

export const SPECIES_RANGES: Readonly<Record<Species, SpeciesRange>> = {
  koi: {
    edible: false, diesAtCold: null, feedFrom: fahrenheit(50), growFrom: fahrenheit(60), bestFrom: 23, bestTo: 30, stressAbove: 30, diesAtHeat: 35,
    source: 'Koi are common carp. Best growth 23 to 30 degC and life from 3 to 35 (reports on culture, read); feeding ends at 8 to 10 degC (lake survey, read); half die within a day at 35.7 degC when used to 26 (J. Fish. Res. Board Canada, 1953, abstract read). Easily digested feed below 60 degF is common practice; stress from memory.',
  },
  goldfish: {
    edible: false, diesAtCold: null, feedFrom: fahrenheit(50), growFrom: fahrenheit(60), bestFrom: 19.3, bestTo: 28.7, stressAbove: 30.5, diesAtHeat: 35,
    source: 'Optimum of oxygen uptake 19.3 degC for fish used to 20 and 28.7 for those used to 28, good to 30.5 (Physiol. Biochem. Zool. 87, 2014, abstract read); 34 degC kills eggs and larvae (Brazilian J. Biology, 2023, abstract read). No feed below 50 degF and easily digested feed below 60 is common practice; the lethal temperature of grown fish from memory.',
  },
  'yellow-perch': {
    edible: true, diesAtCold: null, feedFrom: fahrenheit(45), growFrom: fahrenheit(50), bestFrom: fahrenheit(73), bestTo: fahrenheit(77), stressAbove: fahrenheit(79), diesAtHeat: 29.2,
    source: 'North Central Regional Aquaculture Center white paper, 2003 (read, as quoted): best 73 to 77 degF, little growth below 50, stress above 79. Half die within a day at 29.2 degC when used to 22 to 24 (J. Fish. Res. Board Canada, 1953, abstract read). Feeding temperature from memory.',
  },
  bluegill: {
    edible: true, diesAtCold: null, feedFrom: 10, growFrom: 15, bestFrom: 25, bestTo: 31, stressAbove: 33, diesAtHeat: 36,
    source: 'Growth rates of juvenile bluegill (journal abstract, read): alike from 25 to 31 degC, less at 34. The others from memory.',
  },
  'channel-catfish': {
    edible: true, diesAtCold: null, feedFrom: fahrenheit(54), growFrom: 21, bestFrom: 26, bestTo: 29, stressAbove: 32, diesAtHeat: 33.5,
    source: 'US Fish and Wildlife Service habitat suitability model (read): best 26 to 29 degC, poor growth below 21, none below 18, lethal 33.5 for fish used to 25. Feeding on days above 54 degF kept fish gaining through winter (Southeastern Association of Fish and Wildlife Agencies, 1974, abstract read). Stress temperature from memory.',
  },
  'rainbow-trout': {
    edible: true, diesAtCold: null, feedFrom: 4, growFrom: 7, bestFrom: 13.1, bestTo: 19, stressAbove: 19, diesAtHeat: 26.2,
    source: 'Nevada draft thermal tolerance review, 2015 (read): best 13.1 to 19 degC, chronic limit 19; ultimate lethal temperature 26.2 degC (Progressive Fish-Culturist 40, 1978, abstract read). Feeding temperatures from memory.',
  },
  tilapia: {
    edible: true, diesAtCold: fahrenheit(52), feedFrom: fahrenheit(63), growFrom: fahrenheit(72), bestFrom: fahrenheit(85), bestTo: fahrenheit(88), stressAbove: 35, diesAtHeat: 39,
    source: 'SRAC fact sheet on the life history of tilapia (read): best 85 to 88 degF, a third of it at 72, no feeding below 63, death at 50 to 52. Usual upper lethal limit 39 to 40 degC (species account, read); swimming fails from 37 (Trans. Am. Fish. Soc. 104, 1975, abstract read). Stress temperature from memory.',
  },
};
