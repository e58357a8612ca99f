/**
 * What moves the sediment from the pond to the truck. The figures are common practice, without a published source, and
 * meant to be replaced by the crew's own; the barrow's come within 15 % of published hand transport.
 */
export interface Carrier {
  /** The narrowest gate it passes, m. */
  readonly gateM: number;
  /** What it holds, heaped as such sediment lies, m3. */
  readonly holdsM3: number;
  readonly payloadKg: number;
  /** Mean of both ways on the level, m/s. */
  readonly speedMPerS: number;
  /** Turning, tipping and waiting, s a trip. */
  readonly turnS: number;
  /** How much longer a way takes for each percent of slope, up or down, as a share. */
  readonly perSlopePercent: number;
  /** Steeper than this wants boards, a winch or another way. */
  readonly steepPercent: number;
  readonly byHand: boolean;
}

export const CARRIERS = {
  barrow: { gateM: 0.7, holdsM3: 0.085, payloadKg: 110, speedMPerS: 0.9, turnS: 30, perSlopePercent: 0.06, steepPercent: 10, byHand: true },
  'tracked-barrow': { gateM: 0.8, holdsM3: 0.3, payloadKg: 450, speedMPerS: 1, turnS: 45, perSlopePercent: 0.02, steepPercent: 25, byHand: false },
  'compact-loader': { gateM: 1.1, holdsM3: 0.25, payloadKg: 400, speedMPerS: 1.4, turnS: 30, perSlopePercent: 0.02, steepPercent: 20, byHand: false },
} as const satisfies Record<string, Carrier>;

export type CarrierName = keyof typeof CARRIERS;
export const CARRIER_NAMES = Object.keys(CARRIERS) as CarrierName[];
