import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { requirePositive, requireWithin } from '../input-checks.js';
import { kindsvaterCarter } from './kindsvater-carter.js';
import { kindsvaterShen } from './kindsvater-shen.js';

const FOOT = 0.3048;
const CUBIC_FOOT = FOOT ** 3;

/** How a notch or crest is built. The formulas speak in feet and ft3/s, as their sources do. */
export const WEIR_KINDS = ['suppressed', 'contracted', 'kindsvater-carter', 'v-notch-90', 'v-notch-60', 'v-notch'] as const;
export type WeirKind = (typeof WEIR_KINDS)[number];

export interface WeirInput {
  readonly kind: WeirKind;
  /** Water above the crest or the notch's point, measured upstream of the drawdown. */
  readonly headM: number;
  /** Of a notch of any angle, 25 to 100 degrees: only for the kind v-notch. */
  readonly notchDegrees?: number | null;
  /** Of the crest; not used for a V-notch. */
  readonly crestM: number | null;
  /** Of the channel and of the crest above its floor: only for Kindsvater-Carter. */
  readonly channelM: number | null;
  readonly crestHeightM: number | null;
  /** Water above the crest on the downstream side, when it is drowned. */
  readonly downstreamHeadM: number;
}

export interface WeirFlow {
  readonly flowM3PerS: number;
  readonly working: Working;
  readonly warnings: string[];
}

/** USBR: below this head the water clings to the plate. */
const LEAST_HEAD_FT = 0.2;
/** USBR, from memory: fully contracted notches are rated up to this head. */
const MOST_NOTCH_FT = 1.25;

/**
 * Flow over a thin-plate weir.
 * - suppressed (crest over the full channel): 3.33 L h^1.5; contracted: 3.33 (L − 0.2 h) h^1.5 (Francis), h to L/3
 * - Kindsvater-Carter, any contraction (USBR Water Measurement Manual, ch. 7 §6)
 * - V-notch 90°: 2.49 h^2.48 (Cone); 60°: 1.443 h^2.5 (ASTM D5242); 25 to 100°: Kindsvater-Shen (USBR, ch. 7 §7)
 * - drowned: × [1 − (H2/H1)^n]^0.385, n 1.5 or 2.5 (Villemonte; EPA SWMM Reference Manual, vol. II)
 *
 * Range: head from 0.2 ft, to a third of the crest (Francis) or to 1.25 ft (notches, from memory); water at least 0.2 ft
 * below the crest downstream (USBR).
 * @throws DomainError at /head, /crest, /channel, /crestHeight, /notchDegrees or /downstreamHead
 */
export function weirFlow(input: WeirInput): WeirFlow {
  const { kind, headM, downstreamHeadM } = input;
  requirePositive('/head', headM);
  requireWithin('/head', headM, 0, 100, 'm');
  if (!(downstreamHeadM >= 0 && downstreamHeadM < headM)) throw DomainError.at('/downstreamHead', 'The downstream head must not be negative, and must be less than the head upstream; else nothing flows.');
  const head = headM / FOOT;
  const { flow: free, expression, warnings } = freeFlow(input, head);
  const exponent = kind.startsWith('v-notch') ? 2.5 : 1.5;
  const drowned = (1 - (downstreamHeadM / headM) ** exponent) ** 0.385;
  const flowM3PerS = free * drowned * CUBIC_FOOT;
  const working: Working = {
    rule: 'Weir formula in feet and ft3/s, then in m3/s',
    inputs: [{ name: 'head', value: plain(headM), unit: 'm' }, ...(input.crestM === null ? [] : [{ name: 'crest', value: plain(input.crestM), unit: 'm' }])],
    steps: [
      { label: 'head in feet', expression: `${plain(headM)} / 0.3048`, value: plain(head), unit: 'ft' },
      { label: 'free flow', expression, value: plain(free), unit: 'ft3/s' },
      ...(downstreamHeadM > 0 ? [{ label: 'factor of a drowned weir', expression: `(1 − (${plain(downstreamHeadM)} / ${plain(headM)})^${exponent})^0.385`, value: plain(drowned) }] : []),
      { label: 'flow', expression: `${plain(free)} × ${plain(drowned)} × 0.3048³`, value: plain(flowM3PerS), unit: 'm3/s' },
    ],
  };
  return {
    flowM3PerS,
    working,
    warnings: [
      ...(head < LEAST_HEAD_FT ? ['The head is under 0.2 ft (61 mm), for which weir formulas are not proven: take the flow as good to 25 % only.'] : []),
      ...(downstreamHeadM > 0 ? ['The weir is drowned: the formula is meant for water at least 0.2 ft below the crest downstream, and the correction is less sure than the formula.'] : []),
      ...warnings,
    ],
  };
}

interface FreeFlow {
  readonly flow: number;
  readonly expression: string;
  readonly warnings: string[];
}

function freeFlow(input: WeirInput, head: number): FreeFlow {
  const { kind } = input;
  const h = plain(head);
  const high = head > MOST_NOTCH_FT ? ['The head is over 1.25 ft (38 cm), to which notches are rated (limit from memory).'] : [];
  if (kind === 'v-notch-90') return { flow: 2.49 * head ** 2.48, expression: `2.49 × ${h}^2.48`, warnings: high };
  if (kind === 'v-notch-60') return { flow: 1.443 * head ** 2.5, expression: `1.443 × ${h}^2.5`, warnings: high };
  if (kind === 'v-notch') {
    if (input.notchDegrees === undefined || input.notchDegrees === null) throw DomainError.at('/notchDegrees', 'This notch needs its angle.');
    return { ...kindsvaterShen(head, input.notchDegrees), warnings: high };
  }
  const crest = feet(input.crestM, '/crest');
  const long = (says: string): string[] => (head > crest / 3 ? [`The head is over a third of the crest, to which Francis's formula holds: ${says}.`] : []);
  if (kind === 'suppressed') return { flow: 3.33 * crest * head ** 1.5, expression: `3.33 × ${plain(crest)} × ${h}^1.5`, warnings: long('the approaching water makes the flow greater than this') };
  if (kind === 'kindsvater-carter') return kindsvaterCarter(head, crest, feet(input.channelM, '/channel'), feet(input.crestHeightM, '/crestHeight'));
  // At a head of five crest lengths the contractions would meet, and beyond it the flow would turn negative.
  if (!(head < 5 * crest)) throw DomainError.at('/head', 'The head is too great for so short a crest; the formula holds up to a third of the crest.');
  return {
    flow: 3.33 * (crest - 0.2 * head) * head ** 1.5,
    expression: `3.33 × (${plain(crest)} − 0.2 × ${h}) × ${h}^1.5`,
    warnings: long('it reads low beyond'),
  };
}

function feet(metres: number | null, pointer: string): number {
  if (metres !== null && metres > 0 && Number.isFinite(metres)) return metres / FOOT;
  throw DomainError.at(pointer, 'This weir needs it, and more than 0.');
}
