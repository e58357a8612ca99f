import { ApiSchema } from '@nestjs/swagger';
import { DomainError, within } from '../../../../domain/errors.js';
import { Decimal } from '../../../../domain/decimal.js';
import { parseMoney, type Money } from '../../../../domain/money/index.js';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { MAX_PUMPS, type PumpingDuty, type PumpOffer } from '../../../../domain/trade/hydraulics/index.js';
import { DecimalField, ListField, MoneyField, NestedField, NumberField, QuantityField, TextField } from '../../../../platform/http/fields/index.js';
import { PumpCurveBody, toCurve } from './pump.body.js';
import { PumpingSystemBody } from './pumping-system.body.js';

@ApiSchema({ name: 'PumpOfferInput', description: 'A pump that could be bought.' })
export class PumpOfferBody extends PumpCurveBody {
  @TextField({ description: 'What it is called, such as its SKU.', max: 200 })
  name: string;

  @NumberField({ description: 'What it draws from the wire in watts: the nameplate, not the power of the water.', min: 1, max: 1e6 })
  powerWatts: number;

  @MoneyField({ description: 'Its price; all prices in one currency.', sign: 'not-negative' })
  price: Money;
}

@ApiSchema({ name: 'PumpRankingInput' })
export class PumpRankingBody {
  @NestedField(() => PumpingSystemBody, { description: 'Pipes, lift and vessels.' })
  system: PumpingSystemBody;

  @QuantityField({ description: 'The least flow that is wanted.', kind: 'flow', minSi: 0, maxSi: 10 })
  wantedFlow: Quantity;

  @ListField(() => PumpOfferBody, { description: 'The pumps to choose from.', fewest: 1, most: MAX_PUMPS })
  pumps: PumpOfferBody[];

  @DecimalField({ description: 'The price of a kWh in the currency of the pumps.', min: '0', max: '100', scale: 6, example: '0.16' })
  electricityRate: string;

  @NumberField({ description: 'How many hours a day the pump runs; 24 unless told.', min: 0, max: 24, optional: true, default: 24 })
  hoursPerDay?: number | null;

  @NumberField({ description: 'How many days a year the pump runs; 365 unless told.', min: 0, max: 366, optional: true, default: 365 })
  daysPerYear?: number | null;
}

/** @throws DomainError at /pumps/i/price/currency when the prices are not all in one currency */
export function toOffers(pumps: readonly PumpOfferBody[]): { offers: PumpOffer[]; currency: string } {
  const currency = pumps[0]?.price.currency ?? '';
  const offers = pumps.map(({ name, curve, powerWatts, price }, i) => {
    if (price.currency !== currency) throw DomainError.at(`/pumps/${i}/price/currency`, `All prices must be in one currency; the first is in ${currency}.`);
    return { name, curve: toCurve(curve), powerW: powerWatts, price: within(`/pumps/${i}/price`, () => parseMoney(price)) };
  });
  return { offers, currency };
}

export function toDuty({ wantedFlow, electricityRate, hoursPerDay, daysPerYear }: PumpRankingBody, currency: string): PumpingDuty {
  return { wantedFlow: toSi(wantedFlow), hoursPerDay: hoursPerDay ?? 24, daysPerYear: daysPerYear ?? 365, energyRate: new Decimal(electricityRate), currency };
}
