import { FITTING_TABLE_M } from './fittings.js';
import { TURBULENT_REYNOLDS, velocity } from './friction.js';
import type { SystemCurve } from './pumping-system.js';
import { shownVelocity } from './shown.js';

/**
 * The most that a run should see, m/s: 4 ft/s on suction (common practice: 2 to 4), 5 ft/s on discharge (the limit of
 * NRCS 430 for plastic supply lines, from memory).
 */
export const VELOCITY_LIMITS = { suction: 4 * 0.3048, discharge: 5 * 0.3048 } as const;

/** Hazen-Williams: inner diameter from about 2 in, under 10 ft/s, near 60 °F. */
const HAZEN_WILLIAMS_RANGE = { diameterM: 0.0508, velocity: 10 * 0.3048, minC: 5, maxC: 25 } as const;
/** Share of the greater head by which the two friction formulas may differ before it is said. */
const AGREEMENT = 0.05;

/** Where a system at a flow (m3/s) leaves the ranges of the formulas or the limits of velocity. */
export function flowWarnings(curve: SystemCurve, flow: number): string[] {
  const { system, viscosity } = curve;
  const numbers = (matches: (diameter: number, speed: number) => boolean): string =>
    system.runs.flatMap(({ innerDiameterM }, i) => (matches(innerDiameterM, velocity(flow, innerDiameterM)) ? [String(i + 1)] : [])).join(', ');
  const small = numbers((diameter) => diameter < HAZEN_WILLIAMS_RANGE.diameterM);
  const fast = numbers((_, speed) => speed > HAZEN_WILLIAMS_RANGE.velocity);
  const slow = numbers((diameter, speed) => speed > 0 && (speed * diameter) / viscosity < TURBULENT_REYNOLDS);
  const unlisted = numbers((diameter) => diameter < FITTING_TABLE_M.min || diameter > FITTING_TABLE_M.max);
  const { waterTemperatureC } = system;
  const [one, other] = [curve.headAt(flow, 'hazen-williams'), curve.headAt(flow, 'darcy-weisbach')];
  return [
    ...system.runs.flatMap(({ side, innerDiameterM }, i) => {
      const speed = velocity(flow, innerDiameterM);
      return speed > VELOCITY_LIMITS[side] ? [`Run ${i + 1} (${side}): ${shownVelocity(speed)} is over ${shownVelocity(VELOCITY_LIMITS[side])}; a wider pipe costs less in power, noise and wear.`] : [];
    }),
    ...(small ? [`Hazen-Williams is meant for inner diameters from about 2 in; see Darcy-Weisbach for run ${small}.`] : []),
    ...(fast ? [`Hazen-Williams is meant for less than 10 ft/s; see Darcy-Weisbach for run ${fast}.`] : []),
    ...(slow ? [`The flow in run ${slow} is not fully turbulent; Hazen-Williams does not hold there, and Darcy-Weisbach is uncertain below a Reynolds number of 4,000.`] : []),
    ...(unlisted ? [`The fitting table covers 1 to 4 in pipe; the losses of fittings in run ${unlisted} are taken from the nearest size.`] : []),
    ...(waterTemperatureC < HAZEN_WILLIAMS_RANGE.minC || waterTemperatureC > HAZEN_WILLIAMS_RANGE.maxC ? ['Hazen-Williams is meant for water near 60 degF and does not know the temperature; Darcy-Weisbach does.'] : []),
    ...(Math.abs(one - other) > AGREEMENT * Math.max(one, other) ? ['Hazen-Williams and Darcy-Weisbach differ by more than 5 % of the head here; go by the greater.'] : []),
  ];
}
