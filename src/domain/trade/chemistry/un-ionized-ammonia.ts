import { plain } from '../../decimal.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { requireWithin } from '../input-checks.js';

/**
 * Un-ionized ammonia in mg/L as nitrogen: below 0.02 is the usual aim (common practice); above 0.05 is harmful
 * and toward 2 fish begin to die (University of Florida Extension FA-16, both read as reproduced).
 */
export const AMMONIA_LIMITS_MG_PER_L = { aim: 0.02, harmful: 0.05, deadly: 2 } as const;

export const AMMONIA_LEVELS = ['low', 'raised', 'harmful', 'deadly'] as const;
export type AmmoniaLevel = (typeof AMMONIA_LEVELS)[number];

/** How a test kit states total ammonia: as nitrogen, or as the molecule, which weighs 17.031 / 14.007 as much. */
export const AMMONIA_BASES = { nitrogen: 1, ammonia: 14.007 / 17.031 } as const;
export type AmmoniaBasis = keyof typeof AMMONIA_BASES;

export interface UnionizedAmmonia {
  /** The share of the total that is un-ionized, 0 to 1. */
  readonly share: number;
  /** Un-ionized, as nitrogen. */
  readonly unionizedMgPerL: number;
  /** The total, as nitrogen, at which this water reaches the harmful limit. */
  readonly totalAtLimitMgPerL: number;
  readonly level: AmmoniaLevel;
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * Share = 1 / (1 + 10^(pKa − pH)), pKa = 0.09018 + 2729.92 / T.
 * @param totalMgPerL total ammonia on the stated basis, 0 to 100 mg/L
 * @param pH 4 to 11; stated for 6 to 10
 * @param celsius 0 to 40 °C; stated for 0 to 30, fresh water
 * @throws DomainError at /totalMgPerL, /pH or /temperature
 * @see Emerson, Russo, Lund & Thurston 1975; table in University of Florida Extension FA-16
 */
export function unionizedAmmonia(totalMgPerL: number, basis: AmmoniaBasis, pH: number, celsius: number): UnionizedAmmonia {
  requireWithin('/totalMgPerL', totalMgPerL, 0, 100, 'mg/L');
  requireWithin('/pH', pH, 4, 11, '(pH)');
  requireWithin('/temperature', celsius, 0, 40, 'degC');
  const nitrogen = totalMgPerL * AMMONIA_BASES[basis];
  const pKa = 0.09018 + 2729.92 / (celsius + 273.15);
  const share = 1 / (1 + 10 ** (pKa - pH));
  const unionizedMgPerL = nitrogen * share;
  const level = levelOf(unionizedMgPerL);
  const working: Working = {
    rule: 'un-ionized = total × 1 / (1 + 10^(pKa − pH)), pKa = 0.09018 + 2729.92 / T',
    inputs: [given('total ammonia', totalMgPerL, 'mg/L', `as ${basis}`), given('pH', pH), given('water temperature', celsius, 'degC')],
    steps: [
      step('total as nitrogen', `${plain(totalMgPerL)} × ${plain(AMMONIA_BASES[basis])}`, nitrogen, 'mg/L'),
      step('pKa', `0.09018 + 2729.92 / (${plain(celsius)} + 273.15)`, pKa),
      step('share', `1 / (1 + 10^(${plain(pKa)} − ${plain(pH)}))`, share),
      step('un-ionized, as nitrogen', `${plain(nitrogen)} × ${plain(share)}`, unionizedMgPerL, 'mg/L'),
    ],
  };
  return { share, unionizedMgPerL, totalAtLimitMgPerL: AMMONIA_LIMITS_MG_PER_L.harmful / share, level, working, warnings: [...rangeWarnings(pH, celsius), ...ADVICE[level]] };
}

function levelOf(mgPerL: number): AmmoniaLevel {
  const { aim, harmful, deadly } = AMMONIA_LIMITS_MG_PER_L;
  if (mgPerL >= deadly) return 'deadly';
  if (mgPerL > harmful) return 'harmful';
  return mgPerL > aim ? 'raised' : 'low';
}

function rangeWarnings(pH: number, celsius: number): string[] {
  return [
    ...(pH < 6 || pH > 10 ? ['The formula is stated for pH 6 to 10; outside it this is an extrapolation.'] : []),
    ...(celsius > 30 ? ['The formula is stated for 0 to 30 degC; above it this is an extrapolation.'] : []),
  ];
}

const ADVICE: Record<AmmoniaLevel, readonly string[]> = {
  low: [],
  raised: ['Above 0.02 mg/L un-ionized: test again, feed less, and look at the filter.'],
  harmful: ['Above 0.05 mg/L un-ionized is harmful to fish: stop feeding, change part of the water with dechlorinated water of like temperature, and do not raise the pH.'],
  deadly: ['At 2 mg/L un-ionized fish die: act at once, and call a qualified person.'],
};
