import { GRAVITY, WATER_DENSITY } from './water.js';

/** W that a flow (m3/s) against a head (m) puts into the water: ρ g Q H. */
export function waterPower(flow: number, head: number): number {
  return WATER_DENSITY * GRAVITY * flow * head;
}

/** kWh in a year of a pump that draws `powerW` for so many hours a day and days a year. */
export function yearlyEnergy(powerW: number, hoursPerDay: number, daysPerYear: number): number {
  return (powerW / 1000) * hoursPerDay * daysPerYear;
}
