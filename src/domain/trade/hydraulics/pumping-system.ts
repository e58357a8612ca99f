import { DomainError, within } from '../../errors.js';
import { HAZEN_WILLIAMS_EXPONENT } from './friction.js';
import { runResistance, type PipeRun, type RunResistance } from './pipe-run.js';
import { waterViscosity } from './water.js';

/** A filter, skimmer or other vessel whose loss is known at one flow, and goes with the square of it. */
export interface VesselLoss {
  readonly name: string;
  readonly flowM3PerS: number;
  readonly headM: number;
}

/** What the pump works against. */
export interface PumpingSystem {
  readonly runs: readonly PipeRun[];
  /** From the water level that the pump draws from up to the level it delivers to, m. */
  readonly staticLiftM: number;
  readonly vessels: readonly VesselLoss[];
  readonly waterTemperatureC: number;
}

export type FrictionMethod = 'hazen-williams' | 'darcy-weisbach';

/** A system whose coefficients are worked out, so that the head at a flow costs next to nothing. */
export interface SystemCurve {
  readonly system: PumpingSystem;
  readonly resistances: readonly RunResistance[];
  readonly viscosity: number;
  /** m for each (m3/s)², in the order of the vessels. */
  readonly vesselFactors: readonly number[];
  /** Total dynamic head, m, at a flow in m3/s of 0 or more; never falls as the flow grows. */
  readonly headAt: (flow: number, method: FrictionMethod) => number;
}

/**
 * Total dynamic head = static lift + friction + minor losses + vessels.
 * @throws DomainError at /runs/i/innerDiameter and the like, /staticLift, /vessels/i/flow, /waterTemperature
 */
export function systemCurve(system: PumpingSystem): SystemCurve {
  const { runs, staticLiftM, vessels, waterTemperatureC } = system;
  if (runs.length === 0) throw DomainError.at('/runs', 'There must be at least one pipe run.');
  if (!(staticLiftM >= 0)) throw DomainError.at('/staticLift', 'The static lift must not be negative.');
  const viscosity = waterViscosity(waterTemperatureC);
  const resistances = runs.map((run, i) => within(`/runs/${i}`, () => runResistance(run, viscosity)));
  const vesselFactors = vessels.map(({ flowM3PerS, headM }, i) => {
    if (!(flowM3PerS > 0)) throw DomainError.at(`/vessels/${i}/flow`, 'The flow at which the loss is known must be more than 0.');
    if (!(headM >= 0)) throw DomainError.at(`/vessels/${i}/head`, 'A loss must not be negative.');
    return headM / (flowM3PerS * flowM3PerS);
  });
  const hazenWilliams = total(resistances.map((one) => one.hazenWilliams));
  const square = total(resistances.map(({ minor }) => minor)) + total(vesselFactors);
  const friction = (flow: number, method: FrictionMethod): number =>
    method === 'hazen-williams' ? hazenWilliams * flow ** HAZEN_WILLIAMS_EXPONENT : total(resistances.map(({ darcyWeisbach }) => darcyWeisbach(flow)));
  const headAt = (flow: number, method: FrictionMethod): number => staticLiftM + friction(flow, method) + square * flow * flow;
  return { system, resistances, viscosity, vesselFactors, headAt };
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
