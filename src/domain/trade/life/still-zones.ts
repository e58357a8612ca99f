import { requirePositive } from '../input-checks.js';

/** A part of the pond as a mosquito sees it. */
export interface WaterZone {
  readonly name: string;
  readonly areaM2: number;
  /** Whether the surface moves or splashes. */
  readonly moving: boolean;
  /** Whether fish that eat larvae get there. */
  readonly fish: boolean;
  /** Whether plants or leaves choke it, so that neither current nor fish reach the larvae. */
  readonly choked: boolean;
}

/** Why a zone breeds mosquitoes, or null when it does not: moving water and fish reduce breeding, choked edges still breed (university extension, read). */
export function whyItBreeds({ moving, fish, choked }: WaterZone): string | null {
  if (choked) return 'plants or leaves shelter larvae from current and fish: thin them out';
  if (moving) return null;
  return fish ? null : 'still water that fish do not reach: move it, let fish in, or empty it at the interval';
}

const RING_M2 = 100 * 0.09290304;

/**
 * Slow-release larvicide rings (Bti) for still water: one for each started 100 ft² regardless of depth, as a label has it.
 * @param areaM2 above 0; area measured in square feet keeps its whole hundreds
 * @throws DomainError at /area
 */
export function larvicideRings(areaM2: number): number {
  requirePositive('/area', areaM2);
  return Math.ceil(areaM2 / RING_M2 - 1e-9);
}
