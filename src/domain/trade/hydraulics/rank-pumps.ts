import { Decimal } from '../../decimal.js';
import { within } from '../../errors.js';
import { roundMoney } from '../../money/index.js';
import type { CurvePoint } from '../pump-curve/index.js';
import { operatingPoint } from './operating-point.js';
import { waterPower, yearlyEnergy } from './power.js';
import { pumpCurve } from './pump-curve.js';
import type { SystemCurve } from './pumping-system.js';
import { shownFlow } from './shown.js';
import { whyNoPoint } from './why-no-point.js';

export const RANKING_YEARS = 5;
export const MAX_PUMPS = 500;

export interface PumpOffer {
  readonly name: string;
  readonly curve: readonly CurvePoint[];
  /** Drawn from the wire, W: the nameplate's watts, not the power of the water. */
  readonly powerW: number;
  readonly price: Decimal;
}

export interface PumpingDuty {
  /** m3/s */
  readonly wantedFlow: number;
  readonly hoursPerDay: number;
  readonly daysPerYear: number;
  /** For each kWh, in the currency of the prices. */
  readonly energyRate: Decimal;
  readonly currency: string;
}

/** A pump that gives the wanted flow: flow m3/s, head m. */
export interface RankedPump {
  /** Its place in the list of offers. */
  readonly index: number;
  readonly flow: number;
  readonly head: number;
  readonly wireToWater: number;
  readonly energyKwhPerYear: number;
  readonly energyCostPerYear: Decimal;
  /** Price + five years of energy; no repairs, no interest, no change of rates. */
  readonly fiveYearCost: Decimal;
}

export interface FailedPump {
  readonly index: number;
  readonly kind: 'cannot-lift' | 'past-curve' | 'too-little-flow' | 'impossible-power';
  readonly reason: string;
}

export interface PumpRanking {
  readonly ranked: RankedPump[];
  readonly failed: FailedPump[];
}

/**
 * The pumps that give at least the wanted flow on a system, cheapest over five years first (price and energy); of two
 * that cost the same, the one named first. The flow is found by Hazen-Williams.
 * @throws DomainError at /i/curve/j/flow or /i/curve/j/head
 */
export function rankPumps(offers: readonly PumpOffer[], system: SystemCurve, duty: PumpingDuty): PumpRanking {
  const ranked: RankedPump[] = [];
  const failed: FailedPump[] = [];
  offers.forEach((offer, index) => {
    const point = operatingPoint(within(`/${index}/curve`, () => pumpCurve(offer.curve)), system, 'hazen-williams');
    if (point.kind !== 'point') {
      failed.push({ index, kind: point.kind, reason: `No operating point: ${whyNoPoint(point)}` });
      return;
    }
    const { flow, head } = point;
    if (flow < duty.wantedFlow) {
      failed.push({ index, kind: 'too-little-flow', reason: `It gives ${shownFlow(flow)} of the ${shownFlow(duty.wantedFlow)} wanted.` });
      return;
    }
    const wireToWater = waterPower(flow, head) / offer.powerW;
    if (wireToWater >= 1) {
      failed.push({ index, kind: 'impossible-power', reason: 'It would put more power into the water than it draws; check its power and its curve.' });
      return;
    }
    const energyKwhPerYear = yearlyEnergy(offer.powerW, duty.hoursPerDay, duty.daysPerYear);
    const energyCostPerYear = roundMoney(duty.energyRate.times(energyKwhPerYear), duty.currency);
    ranked.push({ index, flow, head, wireToWater, energyKwhPerYear, energyCostPerYear, fiveYearCost: offer.price.plus(energyCostPerYear.times(RANKING_YEARS)) });
  });
  ranked.sort((a, b) => a.fiveYearCost.cmp(b.fiveYearCost) || a.index - b.index);
  return { ranked, failed };
}
