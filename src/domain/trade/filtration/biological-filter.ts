import { plain } from '../../decimal.js';
import type { Working } from '../../working.js';
import { requirePositive, requireWithin } from '../input-checks.js';
import { given, step } from '../working-lines.js';
import { ammoniaFromFeed, PER_GRAM_NITRIFIED } from './ammonia-from-feed.js';

/** g of ammonia nitrogen that a m2 of media turns over in a day: the span of garden ponds, from memory. */
export const GARDEN_POND_RATES = { slow: 0.1, fast: 0.5 } as const;

export interface BiologicalFilterInput {
  readonly feedKgPerDay: number;
  readonly proteinPercent: number;
  /** g of ammonia nitrogen for each m2 of media in a day, 0.01 to 5. */
  readonly nitrificationGPerM2Day: number;
  /** m2 of media surface in each m3 of media, 10 to 10,000. */
  readonly specificSurfaceM2PerM3: number;
  /** Total ammonia nitrogen that the water may carry into the filter, 0.05 to 10 mg/L. */
  readonly ammoniaLimitMgPerL: number;
  /** What one pass takes out of it, 1 to 100 percent. */
  readonly removalPercent: number;
}

export interface BiologicalFilter {
  readonly ammoniaGPerDay: number;
  readonly mediaAreaM2: number;
  /** At the fast and the slow end of garden ponds. */
  readonly leastAreaM2: number;
  readonly mostAreaM2: number;
  readonly mediaVolumeM3: number;
  readonly flowM3PerS: number;
  /** What the media's bacteria breathe, and what keeps the alkalinity, if all nitrogen is nitrified: upper bounds. */
  readonly oxygenGPerDay: number;
  readonly bicarbonateGPerDay: number;
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * The media a filter needs, area = ammonia / rate, and the flow that brings the ammonia to it,
 * flow = ammonia / (limit × removal).
 * @throws DomainError at /feedPerDay, /proteinPercent, /nitrificationGPerM2Day, /specificSurfaceM2PerM3, /ammoniaLimitMgPerL or /removalPercent
 * @see Timmons & Ebeling, Recirculating Aquaculture (from memory); Losordo & DeLong for the worked case
 */
export function biologicalFilter(input: BiologicalFilterInput): BiologicalFilter {
  const { feedKgPerDay, proteinPercent, nitrificationGPerM2Day: rate, specificSurfaceM2PerM3, ammoniaLimitMgPerL, removalPercent } = input;
  requirePositive('/feedPerDay', feedKgPerDay);
  requireWithin('/nitrificationGPerM2Day', rate, 0.01, 5, 'g/m2 a day');
  requireWithin('/specificSurfaceM2PerM3', specificSurfaceM2PerM3, 10, 10_000, 'm2/m3');
  requireWithin('/ammoniaLimitMgPerL', ammoniaLimitMgPerL, 0.05, 10, 'mg/L');
  requireWithin('/removalPercent', removalPercent, 1, 100, 'percent');
  const ammonia = ammoniaFromFeed(feedKgPerDay, proteinPercent);
  const mediaAreaM2 = ammonia / rate;
  const mediaVolumeM3 = mediaAreaM2 / specificSurfaceM2PerM3;
  const flowM3PerDay = (ammonia * 100) / (ammoniaLimitMgPerL * removalPercent);
  const working: Working = {
    rule: 'ammonia = feed × protein × 0.092; media area = ammonia / rate; flow = ammonia / (limit × removal in a pass)',
    inputs: [
      given('feed in a day', feedKgPerDay, 'kg'),
      given('protein', proteinPercent, 'percent'),
      given('nitrification rate', rate, 'g/m2 a day'),
      given('specific surface', specificSurfaceM2PerM3, 'm2/m3'),
      given('ammonia limit', ammoniaLimitMgPerL, 'mg/L as nitrogen'),
      given('removal in a pass', removalPercent, 'percent'),
    ],
    steps: [
      step('ammonia nitrogen in a day', `${plain(feedKgPerDay)} × 1000 × ${plain(proteinPercent)} / 100 × 0.092`, ammonia, 'g'),
      step('media area', `${plain(ammonia)} / ${plain(rate)}`, mediaAreaM2, 'm2'),
      step('media volume', `${plain(mediaAreaM2)} / ${plain(specificSurfaceM2PerM3)}`, mediaVolumeM3, 'm3'),
      step('flow', `${plain(ammonia)} / (${plain(ammoniaLimitMgPerL)} × ${plain(removalPercent)} / 100)`, flowM3PerDay, 'm3 a day'),
      step('oxygen for it in a day, at most', `${plain(ammonia)} × ${PER_GRAM_NITRIFIED.oxygen}`, ammonia * PER_GRAM_NITRIFIED.oxygen, 'g'),
    ],
  };
  return {
    ammoniaGPerDay: ammonia,
    mediaAreaM2,
    leastAreaM2: ammonia / GARDEN_POND_RATES.fast,
    mostAreaM2: ammonia / GARDEN_POND_RATES.slow,
    mediaVolumeM3,
    flowM3PerS: flowM3PerDay / 86_400,
    oxygenGPerDay: ammonia * PER_GRAM_NITRIFIED.oxygen,
    bicarbonateGPerDay: ammonia * PER_GRAM_NITRIFIED.sodiumBicarbonate,
    working,
    warnings: warningsOf(rate),
  };
}

function warningsOf(rate: number): string[] {
  return [
    'A sanity range, not a guarantee: theoretical media surface overstates what works, and dirt on the media cuts the rate by more than half. A new filter takes weeks to ripen, and one in cold water nearly rests.',
    ...(rate > GARDEN_POND_RATES.fast ? ['Faster than 0.5 g/m2 a day is beyond garden ponds, whose ammonia is low.'] : []),
    ...(rate < GARDEN_POND_RATES.slow ? ['Slower than 0.1 g/m2 a day is below the span of garden ponds.'] : []),
  ];
}
