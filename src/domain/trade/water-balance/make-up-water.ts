import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';

export interface MakeUpWaterInput {
  /** Water surface; m2, above 0. */
  readonly areaM2: number;
  /** m a day */
  readonly evaporationMPerDay: number;
  /** Rain on the surface; m a day. */
  readonly rainMPerDay: number;
  /** m3 a day */
  readonly leakM3PerDay: number;
  /** m3 a day */
  readonly splashM3PerDay: number;
  /** Emptied for water changes; m3 a day. */
  readonly changesM3PerDay: number;
  readonly days: number;
}

export interface MakeUpWater {
  readonly lossM3PerDay: number;
  readonly rainM3PerDay: number;
  /** Loss that rain does not make good, over all days; m3. */
  readonly makeUpM3: number;
  readonly warnings: string[];
  readonly working: Working;
}

/**
 * Water to top up over a season: (evaporation + leak + splash + changes − rain) × days, not below 0. Definition. Rain counts
 * in full, so a single storm that overflows is not seen: the figure is the least, not the most.
 * @throws DomainError at /area or /days
 */
export function makeUpWater(input: MakeUpWaterInput): MakeUpWater {
  const { areaM2, evaporationMPerDay, rainMPerDay, leakM3PerDay, splashM3PerDay, changesM3PerDay, days } = input;
  if (!(areaM2 > 0)) throw DomainError.at('/area', 'The area must be more than 0.');
  if (!(days > 0)) throw DomainError.at('/days', 'The number of days must be more than 0.');
  const evaporationM3PerDay = areaM2 * evaporationMPerDay;
  const rainM3PerDay = areaM2 * rainMPerDay;
  const lossM3PerDay = evaporationM3PerDay + leakM3PerDay + splashM3PerDay + changesM3PerDay;
  const makeUpM3 = Math.max(0, lossM3PerDay - rainM3PerDay) * days;
  const warnings: string[] = [];
  if (rainM3PerDay >= lossM3PerDay) warnings.push('On average rain makes the losses good; dry weeks still need topping up, and wet ones an overflow.');
  if (leakM3PerDay > evaporationM3PerDay) warnings.push('The leak is larger than evaporation: find it before paying for the water.');
  const working: Working = {
    rule: 'make-up = (evaporation + leak + splash + changes − rain) × days, not below 0',
    inputs: [
      given('area', areaM2, 'm2'), given('evaporation a day', evaporationMPerDay, 'm'), given('rain a day', rainMPerDay, 'm'), given('leak a day', leakM3PerDay, 'm3'),
      given('splash a day', splashM3PerDay, 'm3'), given('water changes a day', changesM3PerDay, 'm3'), given('days', days),
    ],
    steps: [
      step('evaporation a day', `${plain(areaM2)} × ${plain(evaporationMPerDay)}`, evaporationM3PerDay, 'm3'),
      step('rain a day', `${plain(areaM2)} × ${plain(rainMPerDay)}`, rainM3PerDay, 'm3'),
      step('loss a day', [evaporationM3PerDay, leakM3PerDay, splashM3PerDay, changesM3PerDay].map(plain).join(' + '), lossM3PerDay, 'm3'),
      step('make-up', `max(0, ${plain(lossM3PerDay)} − ${plain(rainM3PerDay)}) × ${plain(days)}`, makeUpM3, 'm3'),
    ],
  };
  return { lossM3PerDay, rainM3PerDay, makeUpM3, warnings, working };
}
