import { requirePositive, requireWithin } from '../input-checks.js';

/**
 * Coefficient C of Q = C · L · h^1.5 in ft and ft3/s: 3.33 for a sharp edge (Francis), 2.63 for a flat stone, which is
 * a broad crest (EPA SWMM Reference Manual, vol. II: the coefficient falls to 2.63).
 */
export const LIPS = { sharp: 3.33, 'flat-stone': 2.63 } as const;
export type LipKind = keyof typeof LIPS;
export const LIP_KINDS = Object.keys(LIPS) as LipKind[];

/** US gallons an hour for each inch of lip that make a look. Common practice, no source; about 100 is the usual rule. */
export const LOOKS = { trickle: 50, sheet: 100, 'full-sheet': 150, cascade: 200 } as const;
export type Look = keyof typeof LOOKS;
export const LOOK_NAMES = Object.keys(LOOKS) as Look[];

const GPH_PER_INCH = 3.785411784e-3 / 3600 / 0.0254;
/** C in m^0.5/s: ft3/s over ft · ft^1.5. */
const ROOT_FOOT = Math.sqrt(0.3048);

/** m3/s that a look needs over a lip (m). @throws DomainError at /lipWidth */
export function lookFlow(look: Look, lipWidthM: number): number {
  return LOOKS[look] * GPH_PER_INCH * requireWidth(lipWidthM);
}

/** m3/s over a lip at a thickness of the sheet: the head over the lip, m. @throws DomainError at /lipWidth, /sheetThickness */
export function lipFlow(lip: LipKind, lipWidthM: number, thicknessM: number): number {
  requirePositive('/sheetThickness', thicknessM);
  requireWithin('/sheetThickness', thicknessM, 0, 10, 'm');
  return LIPS[lip] * ROOT_FOOT * requireWidth(lipWidthM) * thicknessM ** 1.5;
}

/** Thickness of the sheet, m, that a flow (m3/s) makes on a lip. @throws DomainError at /lipWidth or /flow */
export function sheetThickness(lip: LipKind, lipWidthM: number, flow: number): number {
  requireWithin('/flow', flow, 0, 1e4, 'm3/s');
  return (flow / (LIPS[lip] * ROOT_FOOT * requireWidth(lipWidthM))) ** (2 / 3);
}

function requireWidth(lipWidthM: number): number {
  requirePositive('/lipWidth', lipWidthM);
  requireWithin('/lipWidth', lipWidthM, 0, 1000, 'm');
  return lipWidthM;
}
