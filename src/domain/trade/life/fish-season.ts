import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { requireWithin } from '../input-checks.js';
import { given, step } from '../working-lines.js';
import { SPECIES_RANGES, type Species, type SpeciesRange } from './species.js';

export const FISH_STATES = ['deadly-cold', 'no-feed', 'little-feed', 'growing', 'best', 'warm', 'stress', 'deadly-heat'] as const;
export type FishState = (typeof FISH_STATES)[number];

export interface WaterReading {
  readonly label: string;
  readonly celsius: number;
}

export interface FishSeason {
  readonly edible: boolean;
  readonly periods: readonly { readonly label: string; readonly celsius: number; readonly state: FishState }[];
  /** Whether no period is deadly. */
  readonly survives: boolean;
  readonly source: string;
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * What the water means for the species at one temperature, −5 to 60 °C.
 * @throws DomainError at /temperature
 */
export function stateAt(species: Species, celsius: number): FishState {
  requireWithin('/temperature', celsius, -5, 60, 'degC');
  const range = SPECIES_RANGES[species];
  if (range.diesAtCold !== null && celsius <= range.diesAtCold) return 'deadly-cold';
  if (celsius >= range.diesAtHeat) return 'deadly-heat';
  if (celsius > range.stressAbove) return 'stress';
  if (celsius > range.bestTo) return 'warm';
  if (celsius >= range.bestFrom) return 'best';
  if (celsius >= range.growFrom) return 'growing';
  return celsius >= range.feedFrom ? 'little-feed' : 'no-feed';
}

/**
 * A species through the year: what each period's water means for feeding and for its life.
 * @param readings water temperatures, 1 to 60 of them, −2 to 45 °C
 * @throws DomainError at /periods or /periods/i/temperature
 */
export function fishSeason(species: Species, readings: readonly WaterReading[]): FishSeason {
  if (readings.length === 0) throw DomainError.at('/periods', 'Give the temperature of at least one period.');
  readings.forEach(({ celsius }, i) => requireWithin(`/periods/${i}/temperature`, celsius, -2, 45, 'degC'));
  const range = SPECIES_RANGES[species];
  const periods = readings.map(({ label, celsius }) => ({ label, celsius, state: stateAt(species, celsius) }));
  const survives = periods.every(({ state }) => state !== 'deadly-cold' && state !== 'deadly-heat');
  const working: Working = {
    rule: 'each temperature against the species\' ranges',
    inputs: Object.entries(LIMIT_NAMES).flatMap(([key, name]) => {
      const value = range[key as keyof typeof LIMIT_NAMES];
      return value === null ? [] : [given(name, value, 'degC')];
    }),
    steps: periods.map(({ label, celsius, state }) => step(label, `${plain(celsius)} degC is ${state}`, celsius, 'degC')),
  };
  return { edible: range.edible, periods, survives, source: range.source, working, warnings: warningsOf(range, periods.map(({ state }) => state)) };
}

const LIMIT_NAMES: Record<Exclude<keyof SpeciesRange, 'edible' | 'source'>, string> = {
  diesAtCold: 'dies at cold', feedFrom: 'feed from', growFrom: 'grows from', bestFrom: 'best from', bestTo: 'best to', stressAbove: 'stress above', diesAtHeat: 'dies at heat',
};

function warningsOf(range: SpeciesRange, states: readonly FishState[]): string[] {
  const has = (...of: FishState[]): boolean => states.some((state) => of.includes(state));
  return [
    'Stock only species that are legal in the state, from certified stock, and never release any.',
    ...(range.edible ? ['Fish from a pond treated with an algaecide or dye that is not labelled for food fish must not be eaten.'] : []),
    ...(has('deadly-cold') ? ['In the cold of some period the species dies: take it in, or take another species.'] : []),
    ...(has('deadly-heat') ? ['In the heat of some period the species dies: shade and depth, or another species.'] : []),
    ...(has('stress') ? ['In some period the water is too warm: feed little, do not handle the fish, aerate, since warm water holds less oxygen.'] : []),
    ...(has('no-feed') ? ['In some period the water is too cold to feed; keep a hole in the ice where it freezes, without breaking it by force.'] : []),
  ];
}
