import { plain } from '../../decimal.js';
import type { Working } from '../../working.js';
import { requirePositive, requireWithin } from '../input-checks.js';
import { NITROGEN_PER_PROTEIN } from '../filtration/ammonia-from-feed.js';
import { given, step } from '../working-lines.js';

export const LOAD_MEASURES = ['volume', 'surface', 'feed', 'filter'] as const;
export type LoadMeasure = (typeof LOAD_MEASURES)[number];

const ACRE_M2 = 4046.8564224;
const POUND_KG = 0.45359237;
const GALLON_M3 = 0.003785411784;

/** 100 US gal of water for each lb of fish, at 5,000 lb on an acre. @see SRAC 451 (1998) */
const FISH_KG_PER_M3 = POUND_KG / (100 * GALLON_M3);
const FISH_KG_PER_M2 = (5000 * POUND_KG) / ACRE_M2;
/**
 * 30 lb of feed on an acre in a day is what a pond takes without aeration: at 34 kg on a hectare oxygen never ran short
 * and 99 % of the fish lived, at 56 some suffocated.
 * @see Effects of Feeding Rate on Water Quality, Production of Channel Catfish, and Economic Returns (abstract, read)
 */
const FEED_KG_PER_M2_DAY = (30 * POUND_KG) / ACRE_M2;

export interface FishLoadInput {
  readonly fishKg: number;
  readonly volumeM3: number;
  readonly surfaceM2: number;
  /** Feed in a day as a share of the weight of the fish, above 0 to 10 percent. */
  readonly feedPercentPerDay: number;
  readonly proteinPercent: number;
  readonly aerated: boolean;
  /** Media surface of the filter; null when there is none or it is unknown. */
  readonly mediaAreaM2: number | null;
  readonly nitrificationGPerM2Day: number;
}

export interface LoadLimit {
  readonly measure: LoadMeasure;
  readonly mostFishKg: number;
  /** The fish there are, as a percentage of it. */
  readonly usedPercent: number;
  readonly basis: string;
}

export interface FishLoad {
  readonly limits: readonly LoadLimit[];
  readonly tightest: LoadLimit;
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * The fish there are against what volume, surface, feed and filter carry. Weight, not length: the mass of a fish grows
 * with the cube of its length, so "inches of fish" says nothing.
 * @throws DomainError at /fish, /volume, /surface, /feedPercentPerDay, /proteinPercent, /mediaArea or /nitrificationGPerM2Day
 * @see SRAC 451 (1998) for volume and surface; a feeding-rate study of channel catfish for feed; the filter by its own rate
 */
export function fishLoad(input: FishLoadInput): FishLoad {
  check(input);
  const { fishKg, surfaceM2, volumeM3, aerated, mediaAreaM2, feedPercentPerDay } = input;
  const rows: [LoadMeasure, number, string, string][] = [
    ['volume', volumeM3 * FISH_KG_PER_M3, `${plain(volumeM3)} × ${plain(FISH_KG_PER_M3)}`, '100 gal of water for each lb of fish (SRAC 451)'],
    ['surface', surfaceM2 * FISH_KG_PER_M2, `${plain(surfaceM2)} × ${plain(FISH_KG_PER_M2)}`, '5,000 lb of fish on an acre (SRAC 451)'],
  ];
  if (!aerated) {
    const most = (surfaceM2 * FEED_KG_PER_M2_DAY * 100) / feedPercentPerDay;
    rows.push(['feed', most, `${plain(surfaceM2)} × ${plain(FEED_KG_PER_M2_DAY)} × 100 / ${plain(feedPercentPerDay)}`, '30 lb of feed on an acre in a day without aeration (feeding-rate study of channel catfish)']);
  }
  if (mediaAreaM2 !== null) {
    const gramsPerKg = ((feedPercentPerDay / 100) * 1000 * input.proteinPercent * NITROGEN_PER_PROTEIN) / 100;
    const most = (mediaAreaM2 * input.nitrificationGPerM2Day) / gramsPerKg;
    rows.push(['filter', most, `${plain(mediaAreaM2)} × ${plain(input.nitrificationGPerM2Day)} / ${plain(gramsPerKg)}`, 'media area × nitrification rate / ammonia from each kg of fish']);
  }
  const limits = rows.map(([measure, mostFishKg, , basis]): LoadLimit => ({ measure, mostFishKg, usedPercent: (fishKg / mostFishKg) * 100, basis }));
  const tightest = limits.reduce((least, limit) => (limit.mostFishKg < least.mostFishKg ? limit : least));
  const working: Working = {
    rule: 'the fish that each measure carries; the smallest decides',
    inputs: [
      given('fish', fishKg, 'kg'),
      given('water', volumeM3, 'm3'),
      given('surface', surfaceM2, 'm2'),
      given('feed in a day', feedPercentPerDay, 'percent of the fish'),
      given('protein', input.proteinPercent, 'percent'),
      ...(mediaAreaM2 === null ? [] : [given('media', mediaAreaM2, 'm2'), given('nitrification rate', input.nitrificationGPerM2Day, 'g/m2 a day')]),
    ],
    steps: rows.map(([measure, most, expression, basis]) => step(`most fish by ${measure}: ${basis}`, expression, most, 'kg')),
  };
  return { limits, tightest, working, warnings: warningsOf(input, tightest) };
}

function check({ fishKg, volumeM3, surfaceM2, feedPercentPerDay, proteinPercent, mediaAreaM2, nitrificationGPerM2Day }: FishLoadInput): void {
  requirePositive('/fish', fishKg);
  requirePositive('/volume', volumeM3);
  requirePositive('/surface', surfaceM2);
  requirePositive('/feedPercentPerDay', feedPercentPerDay);
  requireWithin('/feedPercentPerDay', feedPercentPerDay, 0, 10, 'percent');
  requireWithin('/proteinPercent', proteinPercent, 1, 80, 'percent');
  if (mediaAreaM2 !== null) requirePositive('/mediaArea', mediaAreaM2);
  requireWithin('/nitrificationGPerM2Day', nitrificationGPerM2Day, 0.01, 5, 'g/m2 a day');
}

function warningsOf({ aerated, mediaAreaM2 }: FishLoadInput, tightest: LoadLimit): string[] {
  return [
    ...(tightest.usedPercent > 100 ? [`More fish than the ${tightest.measure} carries: fewer fish, or more of it.`] : []),
    ...(tightest.usedPercent > 70 && tightest.usedPercent <= 100 ? ['Little room for growth: fish gain weight every season.'] : []),
    ...(aerated ? ['Aerated: the feed limit of still ponds is left out; a failed aerator brings it back within hours.'] : []),
    ...(mediaAreaM2 === null ? ['Without the media area the filter is not checked.'] : []),
    'The limits of volume and surface are those of farm ponds; a garden pond wants to stay well below them.',
  ];
}
