import { DomainError } from '../../errors.js';

/** Standard gravity, m/s2, exact by definition. */
export const GRAVITY = 9.80665;

/** kg/m3 at 60 °F: 62.37 lb/ft3 (water-treatment textbook, App. C, Table C-2). */
export const WATER_DENSITY = 999.1;

/** Kinematic viscosity in mm2/s at 0, 5, … 30 °C. */
const VISCOSITY_TABLE = [1.7923, 1.5188, 1.3101, 1.1457, 1.0105, 0.8975, 0.8039] as const;
const STEP_C = 5;
export const VISCOSITY_RANGE_C = { min: 0, max: 30 } as const;

/**
 * Kinematic viscosity of fresh water, m2/s, straight between the rows of the table: within 0.6 % of a smooth curve.
 * @param temperatureC 0 to 30 °C
 * @throws DomainError at /waterTemperature outside that range
 * @see International Critical Tables (1928–29), as reproduced in an environmental-engineering encyclopedia
 */
export function waterViscosity(temperatureC: number): number {
  const { min, max } = VISCOSITY_RANGE_C;
  if (!(temperatureC >= min && temperatureC <= max)) throw DomainError.at('/waterTemperature', `The viscosity of water is known here from ${min} to ${max} degC.`);
  const row = Math.min(Math.floor(temperatureC / STEP_C), VISCOSITY_TABLE.length - 2);
  const [low = 0, high = 0] = VISCOSITY_TABLE.slice(row, row + 2);
  return (low + (high - low) * (temperatureC / STEP_C - row)) * 1e-6;
}
