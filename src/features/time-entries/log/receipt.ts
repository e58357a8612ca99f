import { Decimal } from '../../../domain/decimal.js';
import { clockSkewSeconds, toInstant } from '../../../platform/clock/device-time.js';

/** How hours came in. */
export interface Receipt {
  /** By the clock of the device; null when it did not tell. */
  readonly recordedAt: Date | null;
  readonly receivedAt: Date;
  /** The device's clock less the service's. */
  readonly clockSkewSeconds: number | null;
}

/** The receipt of a request that tells the device's time, or does not. */
export function receiptOf(request: { recordedAt?: string | null; sentAt?: string | null }, receivedAt: Date): Receipt {
  return {
    recordedAt: request.recordedAt ? toInstant(request.recordedAt) : null,
    receivedAt,
    clockSkewSeconds: clockSkewSeconds(request.sentAt, receivedAt),
  };
}

/** As the row keeps it. */
export function receiptColumns({ recordedAt, receivedAt, clockSkewSeconds }: Receipt): { recordedAt: Date | null; receivedAt: Date; clockSkewSeconds: Decimal | null } {
  return { recordedAt, receivedAt, clockSkewSeconds: clockSkewSeconds === null ? null : new Decimal(clockSkewSeconds).toDecimalPlaces(3) };
}
