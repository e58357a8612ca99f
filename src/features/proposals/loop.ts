import { Decimal } from '../../domain/decimal.js';
import { toSi } from '../../domain/quantity/index.js';
import { netWaterM3 } from '../../domain/trade/filtration/index.js';
import { shownFlow, type VesselLoss } from '../../domain/trade/hydraulics/index.js';
import type { PartKind } from '../catalog/index.js';
import type { Choice, Line } from './choice.js';
import { chooseByFlow, flowLimits, sharing, vesselLoss } from './parts/flow-parts.js';
import { choosePumps, type PumpChoice } from './parts/pumps.js';
import type { Wanted } from './wanted.js';

const USUAL_TURNOVER_HOURS = 2;
const USUAL_ENERGY_RATE = '0.15';
const NO_VOLUME = 'The flow goes by the water volume, which needs rod readings in the survey.';
const NO_RUN = 'A pump is chosen by its pipe run: put the lengths, sizes, fittings and the lift into the survey.';

/** What is to be measured first. */
export interface Missing {
  readonly missing: string;
}

/** The loop that the water goes around, and the water itself. */
export interface Loop {
  /** The water after clean-out less rock and gravel; null without readings. */
  readonly netWaterM3: number | null;
  readonly skimmer: Choice | Missing;
  readonly filter: Choice | Missing;
  readonly pump: PumpChoice | Missing;
  /** m3/s that goes over a waterfall: of the suggested pump, or what the loop gives today. */
  readonly flowM3PerS: number | null;
  /** Of the filter's media; null when it is unknown. */
  readonly mediaAreaM2: number | null;
  readonly warnings: readonly string[];
}

/** Skimmer and filter by the flow that turns the water over, then the pump against their losses. @throws DomainError at /displacedVolume */
export function designLoop(wanted: Wanted): Loop {
  const { body, survey, takeoff, currency, parts } = wanted;
  // Readings of no depth are no water either.
  const netM3 = takeoff.waterVolumeM3 ? netWaterM3({ basinM3: takeoff.waterVolumeM3, displacedM3: body.displacedVolume ? toSi(body.displacedVolume) : 0, besidesM3: 0 }) : null;
  const flowM3PerS = netM3 === null ? null : netM3 / ((body.turnoverHours ?? USUAL_TURNOVER_HOURS) * 3600);
  const of = (kind: PartKind): typeof parts => parts.filter((part) => part.kind === kind);
  const byFlow = (kind: 'skimmer' | 'filter'): Choice | Missing => (flowM3PerS === null ? { missing: NO_VOLUME } : chooseByFlow(of(kind), flowM3PerS));
  const [skimmer, filter] = [byFlow('skimmer'), byFlow('filter')];
  const taken = [lineInLoop('skimmer', skimmer, wanted, flowM3PerS), lineInLoop('filter', filter, wanted, flowM3PerS)].filter((line) => line !== null);
  const losses = taken.map((line) => ({ line, loss: vesselLoss(line) }));
  const vessels: VesselLoss[] = [
    ...losses.flatMap(({ loss }) => (loss === null ? [] : [loss])),
    ...(body.vessels ?? []).map(({ name, flow, head }) => ({ name, flowM3PerS: toSi(flow), headM: toSi(head) })),
  ];
  const energyRate = new Decimal(body.energyRate ?? USUAL_ENERGY_RATE);
  const { pipeRun } = survey;
  const pump = flowM3PerS === null ? { missing: NO_VOLUME } : pipeRun === null ? { missing: NO_RUN } : choosePumps(of('pump'), { flowM3PerS, pipeRun, vessels, energyRate, currency });
  const pumpFlow = 'missing' in pump ? null : pump.flowM3PerS;
  const filterLine = taken.find(({ part }) => part.attributes?.kind === 'filter');
  return {
    netWaterM3: netM3,
    skimmer,
    filter,
    pump,
    flowM3PerS: wanted.scopes.includes('circulation') ? pumpFlow : body.loopFlow ? toSi(body.loopFlow) : null,
    mediaAreaM2: filterLine === undefined ? null : mediaArea(filterLine),
    warnings: [
      ...losses.flatMap(({ line, loss }) => (loss === null ? [`The head loss of ${line.part.name} is not in the catalog: the pumps are ranked without it.`] : [])),
      ...taken.flatMap((line) => (pumpFlow === null ? [] : beyondLimits(line, pumpFlow))),
    ],
  };
}

/** The named part, or else the suggested one when it is to be built; as many as share the flow, spare ones of a pack left out. */
function lineInLoop(kind: 'skimmer' | 'filter', choice: Choice | Missing, { named, scopes }: Wanted, flowM3PerS: number | null): Line | null {
  const suggested = scopes.includes(kind) && !('missing' in choice) ? choice.fitting[0]?.part : undefined;
  const part = named[kind] ?? suggested;
  return part === undefined ? null : { part, quantity: new Decimal(flowM3PerS === null ? 1 : sharing(part, flowM3PerS)) };
}

/** The pump gives more than was wanted; what was chosen for the wanted flow may not take that. */
function beyondLimits({ part, quantity }: Line, pumpFlow: number): string[] {
  const { most } = flowLimits(part);
  const each = pumpFlow / quantity.toNumber();
  return most !== null && each > most * (1 + 1e-9) ? [`With the suggested pump each ${part.name} gets ${shownFlow(each)}, and takes up to ${shownFlow(most)}: throttle the pump, or take another.`] : [];
}

function mediaArea({ part, quantity }: Line): number | null {
  const { attributes } = part;
  return attributes?.kind === 'filter' && attributes.surfaceArea ? toSi(attributes.surfaceArea) * quantity.toNumber() : null;
}
