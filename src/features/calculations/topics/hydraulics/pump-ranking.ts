import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { plain } from '../../../../domain/decimal.js';
import { within } from '../../../../domain/errors.js';
import type { Money } from '../../../../domain/money/index.js';
import type { Quantity } from '../../../../domain/quantity/index.js';
import { flowWarnings, rankPumps, RANKING_YEARS, systemCurve, type PumpingDuty, type PumpOffer, type RankedPump } from '../../../../domain/trade/hydraulics/index.js';
import type { Working } from '../../../../domain/working.js';
import { OFFICE } from '../../../../platform/auth/actor.js';
import { MoneyBody, QuantityBody, toMoneyBody } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';
import { inUnit } from './in-us-units.js';
import { PumpRankingBody, toDuty, toOffers } from './pump-ranking.body.js';
import { toPumpingSystem } from './pumping-system.body.js';

@ApiSchema({ name: 'RankedPump', description: 'A pump that gives the wanted flow.' })
export class RankedPumpView {
  @ApiProperty({ type: 'integer', description: 'Its position in the list that was sent, from 0.' })
  index: number;

  @ApiProperty({ type: 'string', description: 'What it is called.' })
  name: string;

  @ApiProperty({ type: QuantityBody, description: 'The flow at its operating point, in gpm.' })
  flow: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The total dynamic head there, in ft.' })
  head: Quantity;

  @ApiProperty({ type: 'number', description: 'How much of the electrical power reaches the water there, in percent.' })
  wireToWaterPercent: number;

  @ApiProperty({ type: 'number', description: 'The energy of a year in kWh.' })
  energyKwhPerYear: number;

  @ApiProperty({ type: MoneyBody, description: 'What the energy of a year costs.' })
  energyCostPerYear: Money;

  @ApiProperty({ type: MoneyBody, description: 'Its price and five years of energy; no repairs, no interest, no change of the rate.' })
  fiveYearCost: Money;
}

@ApiSchema({ name: 'FailedPump', description: 'A pump that does not give the wanted flow.' })
export class FailedPumpView {
  @ApiProperty({ type: 'integer', description: 'Its position in the list that was sent, from 0.' })
  index: number;

  @ApiProperty({ type: 'string', description: 'What it is called.' })
  name: string;

  @ApiProperty({ type: 'string', enum: ['cannot-lift', 'past-curve', 'too-little-flow', 'impossible-power'], description: 'Why, as a word.' })
  kind: string;

  @ApiProperty({ type: 'string', description: 'Why, as a sentence.' })
  reason: string;
}

@ApiSchema({ name: 'PumpRanking' })
export class PumpRankingView extends ComputedView {
  @ApiProperty({ type: [RankedPumpView], description: 'The pumps that give the wanted flow, the cheapest over five years first.' })
  ranked: RankedPumpView[];

  @ApiProperty({ type: [FailedPumpView], description: 'The others, in the order they were sent.' })
  failed: FailedPumpView[];
}

export const PUMP_RANKING = calculation({
  name: 'pump-ranking',
  title: 'Pumps for a circulation loop, by what they cost over five years',
  description: 'The operating point of each pump on one system by Hazen-Williams; those that give the wanted flow ranked by price and five years of energy, each other one with the reason it fails. See the circulation loop for the chosen one by Darcy-Weisbach.',
  input: PumpRankingBody,
  output: PumpRankingView,
  roles: OFFICE,
  run: (input: PumpRankingBody): PumpRankingView => {
    const { offers, currency } = toOffers(input.pumps);
    const duty = toDuty(input, currency);
    const system = within('/system', () => systemCurve(toPumpingSystem(input.system)));
    const { ranked, failed } = within('/pumps', () => rankPumps(offers, system, duty));
    const nameOf = (index: number): string => offers[index]?.name ?? '';
    const best = ranked[0];
    return {
      ranked: ranked.map(({ index, flow, head, wireToWater, energyKwhPerYear, energyCostPerYear, fiveYearCost }) => ({
        index,
        name: nameOf(index),
        flow: inUnit(flow, 'gpm'),
        head: inUnit(head, 'ft'),
        wireToWaterPercent: wireToWater * 100,
        energyKwhPerYear,
        energyCostPerYear: toMoneyBody(energyCostPerYear, currency),
        fiveYearCost: toMoneyBody(fiveYearCost, currency),
      })),
      failed: failed.map(({ index, kind, reason }) => ({ index, name: nameOf(index), kind, reason })),
      working: workingOf(duty, system.headAt(duty.wantedFlow, 'hazen-williams'), best && { pump: best, offer: offers[best.index] }),
      warnings: best ? flowWarnings(system, best.flow) : ['No pump of the list gives the wanted flow on this system; see the reasons.'],
    };
  },
});

/** The head that the wanted flow needs, and the arithmetic of the first pump; the others go alike. */
function workingOf(duty: PumpingDuty, headAtWanted: number, best: { pump: RankedPump; offer: PumpOffer | undefined } | undefined): Working {
  const { hoursPerDay, daysPerYear, energyRate, currency, wantedFlow } = duty;
  return {
    rule: `Cost over ${RANKING_YEARS} years = price + ${RANKING_YEARS} × yearly energy × rate, for pumps whose operating point gives the wanted flow`,
    inputs: [
      { name: 'wanted flow', value: plain(wantedFlow), unit: 'm3/s' },
      { name: 'electricity rate', value: plain(energyRate), unit: `${currency}/kWh` },
    ],
    steps: [
      { label: 'head of the system at the wanted flow', expression: 'static lift + friction (Hazen-Williams) + minor losses + vessels', value: plain(headAtWanted), unit: 'm' },
      ...(best?.offer
        ? [
            { label: `yearly energy of ${best.offer.name}`, expression: `${plain(best.offer.powerW)} / 1000 × ${plain(hoursPerDay)} × ${plain(daysPerYear)}`, value: plain(best.pump.energyKwhPerYear), unit: 'kWh' },
            { label: 'its cost', expression: `${plain(best.pump.energyKwhPerYear)} × ${plain(energyRate)}, rounded`, value: plain(best.pump.energyCostPerYear), unit: currency },
            { label: `cost over ${RANKING_YEARS} years`, expression: `${plain(best.offer.price)} + ${RANKING_YEARS} × ${plain(best.pump.energyCostPerYear)}`, value: plain(best.pump.fiveYearCost), unit: currency },
          ]
        : []),
    ],
  };
}
