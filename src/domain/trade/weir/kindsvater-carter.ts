import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';

/** Crest over channel width, and C1 and C2 of C_e = C1 h/p + C2 there (EPA SWMM Reference Manual, Table 6-2, after USBR). */
const COEFFICIENTS = [
  [0.2, -0.0087, 3.152],
  [0.4, 0.0317, 3.164],
  [0.5, 0.0612, 3.173],
  [0.6, 0.0995, 3.178],
  [0.7, 0.1602, 3.182],
  [0.8, 0.2376, 3.189],
  [0.9, 0.3447, 3.205],
  [1, 0.4, 3.22],
] as const;

/** Crest over channel width, and what is added to the crest, ft (USBR fig. 7-4, from memory; a worksheet that reads the figure has 0.010 at a half). */
const CREST_CORRECTIONS = [
  [0.2, 0.008],
  [0.4, 0.009],
  [0.6, 0.012],
  [0.8, 0.014],
  [1, -0.003],
] as const;

/** ft: what is added to the head. */
const HEAD_CORRECTION = 0.003;

/**
 * Q = C_e (L + k_b)(h + 0.003 ft)^1.5, all in ft and ft3/s.
 * @throws DomainError at /crest when the crest is wider than its channel
 * @see USBR Water Measurement Manual, ch. 7 §6, eq. 7-1 and 7-2
 */
export function kindsvaterCarter(head: number, crest: number, channel: number, crestHeight: number): { flow: number; expression: string; warnings: string[] } {
  if (crest > channel * (1 + 1e-9)) throw DomainError.at('/crest', 'The crest must not be wider than its channel.');
  const share = Math.min(1, crest / channel);
  const c1 = between(COEFFICIENTS.map(([x, y]) => [x, y]), share);
  const c2 = between(COEFFICIENTS.map(([x, , y]) => [x, y]), share);
  const coefficient = c1 * (head / crestHeight) + c2;
  const correction = between(CREST_CORRECTIONS, share);
  return {
    flow: coefficient * (crest + correction) * (head + HEAD_CORRECTION) ** 1.5,
    expression: `(${plain(c1)} × ${plain(head)} / ${plain(crestHeight)} + ${plain(c2)}) × (${plain(crest)} + ${plain(correction)}) × (${plain(head)} + ${HEAD_CORRECTION})^1.5`,
    warnings: [
      ...(share < 0.2 ? ['The crest is under a fifth of the channel: the coefficients are those of a fifth.'] : []),
      ...(crest < 0.5 || crestHeight < 1 / 3 ? ['The crest is shorter than 6 in or lower than 4 in above the floor: the formula is not proven there (limits from memory).'] : []),
      ...(head > 2 * crestHeight ? ['The head is over twice the height of the crest above the floor: the formula is not proven there (limit from memory).'] : []),
    ],
  };
}

/** Straight between the rows, and the first row below them. */
function between(rows: readonly (readonly [number, number])[], x: number): number {
  const next = rows.findIndex(([at]) => at >= x);
  const [x1, y1] = rows[Math.max(next, 0)] as readonly [number, number];
  if (next <= 0) return y1;
  const [x0, y0] = rows[next - 1] as readonly [number, number];
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}
