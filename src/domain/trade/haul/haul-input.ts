import type { CarrierName } from './carriers.js';
import type { Excavator, HandDigging } from './digging.js';

export interface HaulInput {
  readonly carrier: CarrierName;
  /** One way, m. */
  readonly distanceM: number;
  /** Above 0 uphill with the load, below 0 downhill. */
  readonly slopePercent: number;
  /** The narrowest place on the way, m; null when nothing is in the way. */
  readonly gateM: number | null;
  /** By hand, by machine, or null when the sediment lies ready to be loaded. */
  readonly digging: HandDigging | Excavator | null;
  readonly densityKgPerM3: number;
  readonly bulkingPercent: number;
  /** Working minutes of an hour, as a share. */
  readonly efficiency: number;
  /** What differs from the usual carrier of the kind. */
  readonly holdsM3: number | null;
  readonly payloadKg: number | null;
  readonly speedMPerS: number | null;
}
