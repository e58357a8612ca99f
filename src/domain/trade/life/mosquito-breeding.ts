import { plain } from '../../decimal.js';
import type { Working, WorkingStep } from '../../working.js';
import { requirePositive, requireWithin } from '../input-checks.js';
import { given, step } from '../working-lines.js';
import { DEVELOPMENT_BOUNDS_C, isExtrapolated, mosquitoDevelopmentDays } from './mosquito-development.js';
import { larvicideRings, whyItBreeds, type WaterZone } from './still-zones.js';

/** The longest interval that any schedule should have: a week (common practice: shorter than 5 to 7 days). */
const LONGEST_INTERVAL_DAYS = 7;

export interface MosquitoInput {
  readonly celsius: number;
  readonly volumeM3: number;
  /** 0 when nothing moves the water. */
  readonly flowM3PerS: number;
  readonly zones: readonly WaterZone[];
}

export interface MosquitoBreeding {
  /** From egg to adult; null below the temperature at which development stops. */
  readonly developmentDays: number | null;
  /** Still water should be emptied or moved at least this often; null likewise. */
  readonly intervalDays: number | null;
  /** null when nothing moves the water. */
  readonly turnoverHours: number | null;
  /** How often the pond turns over while one brood develops; null where either is. */
  readonly turnoversPerBrood: number | null;
  readonly zones: readonly { readonly name: string; readonly areaM2: number; readonly why: string | null }[];
  readonly breedingAreaM2: number;
  readonly larvicideRings: number;
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * A mosquito's development time against turnover and still zones. Turnover alone clears no zone that the current
 * passes by, so the zones decide and the turnover only informs.
 * @throws DomainError at /temperature, /volume, /flow or /zones/i/area
 */
export function mosquitoBreeding({ celsius, volumeM3, flowM3PerS, zones }: MosquitoInput): MosquitoBreeding {
  requireWithin('/temperature', celsius, 0, 45, 'degC');
  requirePositive('/volume', volumeM3);
  requireWithin('/flow', flowM3PerS, 0, 100, 'm3/s');
  zones.forEach(({ areaM2 }, i) => requirePositive(`/zones/${i}/area`, areaM2));
  const developmentDays = mosquitoDevelopmentDays(celsius);
  const intervalDays = developmentDays === null ? null : Math.min(LONGEST_INTERVAL_DAYS, developmentDays / 2);
  const turnoverHours = flowM3PerS > 0 ? volumeM3 / flowM3PerS / 3600 : null;
  const turnoversPerBrood = developmentDays === null || turnoverHours === null ? null : (developmentDays * 24) / turnoverHours;
  const judged = zones.map((zone) => ({ name: zone.name, areaM2: zone.areaM2, why: whyItBreeds(zone) }));
  const breeding = judged.filter(({ why }) => why !== null);
  const breedingAreaM2 = breeding.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  const rings = breeding.reduce((sum, { areaM2 }) => sum + larvicideRings(areaM2), 0);
  const steps: WorkingStep[] = [
    ...(developmentDays === null || intervalDays === null
      ? [step('development', `stops below ${DEVELOPMENT_BOUNDS_C.least} degC`, celsius, 'degC')]
      : [
          step('egg to adult', '14 days at 70 degF, 10 at 80 degF; a line between, 350 / (degF − 45) beyond', developmentDays, 'days'),
          step('longest interval', `half of ${plain(developmentDays)}, at most ${LONGEST_INTERVAL_DAYS}`, intervalDays, 'days'),
        ]),
    ...(turnoverHours === null ? [] : [step('turnover', `${plain(volumeM3)} / ${plain(flowM3PerS)} / 3600`, turnoverHours, 'h')]),
    ...(turnoverHours === null || turnoversPerBrood === null || developmentDays === null ? [] : [step('turnovers while a brood develops', `${plain(developmentDays)} × 24 / ${plain(turnoverHours)}`, turnoversPerBrood)]),
    step('area that breeds', breeding.map(({ areaM2 }) => plain(areaM2)).join(' + ') || '0', breedingAreaM2, 'm2'),
  ];
  const working: Working = {
    rule: 'still or choked zones breed when mosquitoes develop faster than they are emptied or moved',
    inputs: [given('water temperature', celsius, 'degC'), given('water', volumeM3, 'm3'), given('flow', flowM3PerS, 'm3/s'), ...zones.map(({ name, areaM2 }) => given(name, areaM2, 'm2'))],
    steps,
  };
  return { developmentDays, intervalDays, turnoverHours, turnoversPerBrood, zones: judged, breedingAreaM2, larvicideRings: rings, working, warnings: warningsOf(celsius, turnoverHours, breedingAreaM2) };
}

function warningsOf(celsius: number, turnoverHours: number | null, breedingAreaM2: number): string[] {
  return [
    'Some species need only 4 days from egg to adult in warm water, others a month: the figure is for a common pond mosquito.',
    ...(celsius < DEVELOPMENT_BOUNDS_C.least ? ['Below 9.8 degC (50 degF) development stops; it goes on when the water warms.'] : []),
    ...(celsius > DEVELOPMENT_BOUNDS_C.most ? ['Above 34.2 degC (94 degF) few larvae live; the days are an extrapolation.'] : []),
    ...(isExtrapolated(celsius) && celsius >= DEVELOPMENT_BOUNDS_C.least ? ['Outside 70 to 80 degF, where the source gives figures, the days are extrapolated.'] : []),
    ...(turnoverHours === null ? ['Nothing moves the water: all of it that fish do not reach is still.'] : []),
    ...(breedingAreaM2 > 0 ? ['Bti larvicide kills feeding larvae only, and a ring lasts about 30 days, less in dirty water. The label is the law, and applying it for hire may need a licence: ask the state.'] : []),
  ];
}
