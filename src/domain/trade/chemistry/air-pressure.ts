import { requireWithin } from '../input-checks.js';

/** Pressure at sea level in the standard atmosphere, in mmHg. */
export const SEA_LEVEL_MMHG = 760;

/**
 * Station pressure at an altitude in the standard atmosphere, in mmHg. Weather reports correct pressure to sea level:
 * theirs is not this one.
 * @param altitudeM above sea level, −430 to 5,000 m
 * @throws DomainError at /altitude
 * @see International Standard Atmosphere: p = p0 (1 − L h / T0)^(g M / (R L))
 */
export function standardPressureMmHg(altitudeM: number): number {
  requireWithin('/altitude', altitudeM, -430, 5000, 'm');
  return SEA_LEVEL_MMHG * (1 - (0.0065 * altitudeM) / 288.15) ** ((9.80665 * 0.0289644) / (8.31446 * 0.0065));
}
