import { Decimal } from '../../../domain/decimal.js';
import { toSi } from '../../../domain/quantity/index.js';
import { type PipeRun, rankPumps, shownFlow, systemCurve } from '../../../domain/trade/hydraulics/index.js';
import type { PartEntity } from '../../catalog/index.js';
import type { SurveyEntity } from '../../surveys/index.js';
import type { Choice } from '../choice.js';

export interface PumpingWanted {
  readonly flowM3PerS: number;
  readonly pipeRun: NonNullable<SurveyEntity['pipeRun']>;
  readonly energyRate: Decimal;
  readonly currency: string;
}

/** Plastic pipe: C 150 (NRCS 430HH), roughness 5e-6 ft. Water at 20 degC. Running all year. */
const PLASTIC = { hazenWilliamsC: 150, roughnessM: 1.524e-6 };
const WATER_C = 20;
const ALWAYS = { hoursPerDay: 24, daysPerYear: 365 };

/** The pumps that give the flow on the surveyed pipe run, cheapest over five years of price and energy first. */
export function choosePumps(parts: readonly PartEntity[], { flowM3PerS, pipeRun, energyRate, currency }: PumpingWanted): Choice {
  const known = parts.flatMap((part) => (part.attributes?.kind === 'pump' && part.attributes.curve && part.attributes.powerWatts ? [{ part, curve: part.attributes.curve, powerW: part.attributes.powerWatts }] : []));
  const unknown = parts.filter((part) => !known.some((one) => one.part === part));
  const runs: PipeRun[] = pipeRun.pipes.map(({ side, length, innerDiameter, fittings }) => ({ side, lengthM: toSi(length), innerDiameterM: toSi(innerDiameter), fittings: fittings ?? [], otherK: 0, ...PLASTIC }));
  const system = systemCurve({ runs, staticLiftM: toSi(pipeRun.staticLift), vessels: [], waterTemperatureC: WATER_C });
  const offers = known.map(({ part, curve, powerW }) => ({ name: part.name, curve: curve.map(({ flow, head }) => ({ flowM3PerS: toSi(flow), headM: toSi(head) })), powerW, price: part.unitCost }));
  const { ranked, failed } = rankPumps(offers, system, { wantedFlow: flowM3PerS, energyRate, currency, ...ALWAYS });
  const partAt = (index: number): PartEntity[] => known.slice(index, index + 1).map(({ part }) => part);
  return {
    fitting: ranked.flatMap((pump) => partAt(pump.index).map((part) => ({ part, quantity: new Decimal(1), cost: pump.fiveYearCost, why: `Gives ${shownFlow(pump.flow)} on the surveyed pipe run, ${shownFlow(flowM3PerS)} wanted; cheapest first over five years of price and energy.` }))),
    ruledOut: [...failed.flatMap(({ index, reason }) => partAt(index).map((part) => ({ part, reason }))), ...unknown.map((part) => ({ part, reason: 'Its pump curve or its power is not in the catalog.' }))],
  };
}
