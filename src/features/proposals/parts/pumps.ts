import { Decimal } from '../../../domain/decimal.js';
import { toSi } from '../../../domain/quantity/index.js';
import { flowWarnings, type PipeRun, rankPumps, shownFlow, systemCurve, type VesselLoss } from '../../../domain/trade/hydraulics/index.js';
import { toMoneyBody } from '../../../platform/http/fields/index.js';
import type { PartEntity } from '../../catalog/index.js';
import type { SurveyEntity } from '../../surveys/index.js';
import type { Choice, Fitting } from '../choice.js';

export interface PumpingWanted {
  readonly flowM3PerS: number;
  /** Net, for the turnover. */
  readonly waterM3: number;
  readonly pipeRun: NonNullable<SurveyEntity['pipeRun']>;
  /** What the whole flow goes through besides the pipes. */
  readonly vessels: readonly VesselLoss[];
  readonly energyRate: Decimal;
  readonly currency: string;
}

export interface PumpChoice extends Choice {
  /** m3/s at the operating point of each that would do, in their order. */
  readonly flowsM3PerS: readonly number[];
}

/** Plastic pipe: C 150 (NRCS 430HH), roughness 5e-6 ft. Water at 20 degC. Running all year. */
const PLASTIC = { hazenWilliamsC: 150, roughnessM: 1.524e-6 };
const WATER_C = 20;
const ALWAYS = { hoursPerDay: 24, daysPerYear: 365 };

/** The pumps that give the flow on the surveyed pipe run, cheapest over five years of price and energy first. */
export function choosePumps(parts: readonly PartEntity[], { flowM3PerS, waterM3, pipeRun, vessels, energyRate, currency }: PumpingWanted): PumpChoice {
  const known = parts.flatMap((part) => (part.attributes?.kind === 'pump' && part.attributes.curve && part.attributes.powerWatts ? [{ part, curve: part.attributes.curve, powerW: part.attributes.powerWatts }] : []));
  const unknown = parts.filter((part) => !known.some((one) => one.part === part));
  const runs: PipeRun[] = pipeRun.pipes.map(({ side, length, innerDiameter, fittings }) => ({ side, lengthM: toSi(length), innerDiameterM: toSi(innerDiameter), fittings: fittings ?? [], otherK: 0, ...PLASTIC }));
  const system = systemCurve({ runs, staticLiftM: toSi(pipeRun.staticLift), vessels, waterTemperatureC: WATER_C });
  const offers = known.map(({ part, curve, powerW }) => ({ name: part.name, curve: curve.map(({ flow, head }) => ({ flowM3PerS: toSi(flow), headM: toSi(head) })), powerW, price: part.unitCost.times(part.packSize) }));
  const { ranked, failed } = rankPumps(offers, system, { wantedFlow: flowM3PerS, energyRate, currency, ...ALWAYS });
  const partAt = (index: number): PartEntity => (known[index] as (typeof known)[number]).part;
  const against = ['pipes', ...vessels.map(({ name }) => name)].join(', ');
  const fitting = ranked.map(({ index, flow, fiveYearCost, energyKwhPerYear, energyCostPerYear }): Fitting => {
    const part = partAt(index);
    const turnover = `turns the water over in ${(waterM3 / flow / 3600).toFixed(1)} h`;
    const energy = `${energyKwhPerYear.toFixed(0)} kWh and ${toMoneyBody(energyCostPerYear, currency).amount} ${currency} of energy a year`;
    const why = `Gives ${shownFlow(flow)} against the losses of ${against}, ${shownFlow(flowM3PerS)} wanted, and ${turnover}; ${energy}; cheapest first over five years of price and energy.`;
    return { part, quantity: part.packSize, also: [], cost: fiveYearCost, why, cautions: flowWarnings(system, flow) };
  });
  return {
    fitting,
    ruledOut: [...failed.map(({ index, reason }) => ({ part: partAt(index), reason })), ...unknown.map((part) => ({ part, reason: 'Its pump curve or its power is not in the catalog.' }))],
    flowsM3PerS: ranked.map(({ flow }) => flow),
  };
}
