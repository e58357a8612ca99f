import { Decimal, plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import { roundMoney } from '../../money/index.js';
import { fromSi, type Unit } from '../../quantity/index.js';
import type { Working, WorkingStep } from '../../working.js';
import { given } from '../working-lines.js';

/** What a water price is for: so many of a unit, as bills say it. */
export const WATER_PRICE_BASES = {
  '1 gal': { count: 1, unit: 'gal' },
  '1000 gal': { count: 1000, unit: 'gal' },
  '100 ft3': { count: 100, unit: 'ft3' },
  '1 m3': { count: 1, unit: 'm3' },
} as const satisfies Record<string, { count: number; unit: Unit }>;
export type WaterPriceBasis = keyof typeof WATER_PRICE_BASES;

export interface MeteredPrice {
  readonly amount: Decimal;
  readonly basis: WaterPriceBasis;
}

export interface TruckPrice {
  /** For one load, brought. */
  readonly amount: Decimal;
  /** m3 */
  readonly loadM3: number;
}

export interface WaterCost {
  readonly metered: Decimal | null;
  readonly trucked: Decimal | null;
  readonly loads: number | null;
  readonly cheaper: 'metered' | 'trucked' | null;
  readonly working: Working;
}

/**
 * What a volume of water costs from the meter and by truck: metered = volume / basis × price, trucked = whole loads × price,
 * each rounded once, half up, to the currency's minor unit. Of equal ones the meter counts as cheaper.
 * @param volumeM3 0 or more
 * @throws DomainError at /metered when neither price is given, or at /trucked/load
 */
export function waterCost(volumeM3: number, metered: MeteredPrice | null, trucked: TruckPrice | null, currency: string): WaterCost {
  if (metered === null && trucked === null) throw DomainError.at('/metered', 'Give the price from the meter, by truck, or both.');
  if (trucked !== null && !(trucked.loadM3 > 0)) throw DomainError.at('/trucked/load', 'A load must be more than 0.');
  const steps: WorkingStep[] = [];
  const inputs = [given('volume', volumeM3, 'm3')];
  let meteredCost: Decimal | null = null;
  if (metered !== null) {
    const { count, unit } = WATER_PRICE_BASES[metered.basis];
    const bases = new Decimal(fromSi(volumeM3, unit)).div(count);
    meteredCost = roundMoney(bases.times(metered.amount), currency);
    inputs.push({ name: `price for ${metered.basis}`, value: metered.amount.toFixed(), unit: currency });
    steps.push({ label: `volume in units of ${metered.basis}`, expression: `${plain(volumeM3)} m3`, value: plain(bases) });
    steps.push({ label: 'from the meter', expression: `${plain(bases)} × ${metered.amount.toFixed()}, rounded`, value: meteredCost.toFixed(), unit: currency });
  }
  let truckedCost: Decimal | null = null;
  let loads: number | null = null;
  if (trucked !== null) {
    // A volume that was itself a number of loads must not gain one by binary dust.
    loads = Math.ceil(volumeM3 / trucked.loadM3 - 1e-9);
    truckedCost = roundMoney(trucked.amount.times(loads), currency);
    inputs.push(given('load', trucked.loadM3, 'm3'), { name: 'price for a load', value: trucked.amount.toFixed(), unit: currency });
    steps.push({ label: 'loads', expression: `${plain(volumeM3)} / ${plain(trucked.loadM3)}, rounded up`, value: String(loads) });
    steps.push({ label: 'by truck', expression: `${loads} × ${trucked.amount.toFixed()}`, value: truckedCost.toFixed(), unit: currency });
  }
  const cheaper = meteredCost === null || truckedCost === null ? null : truckedCost.lt(meteredCost) ? 'trucked' : 'metered';
  return { metered: meteredCost, trucked: truckedCost, loads, cheaper, working: { rule: 'metered = volume / basis × price; trucked = whole loads × price', inputs, steps } };
}
