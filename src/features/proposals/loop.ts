import { Decimal } from '../../domain/decimal.js';
import { toSi } from '../../domain/quantity/index.js';
import { netWaterM3 } from '../../domain/trade/filtration/index.js';
import type { VesselLoss } from '../../domain/trade/hydraulics/index.js';
import type { Choice, Line } from './choice.js';
import { mediaArea, type Missing, NO_VOLUME, sameLines, tooMuchFor, type Vessels, vesselsAt } from './loop-vessels.js';
import { vesselLoss } from './parts/flow-parts.js';
import { choosePumps, type PumpChoice } from './parts/pumps.js';
import type { Wanted } from './wanted.js';

const USUAL_TURNOVER_HOURS = 2;
const USUAL_ENERGY_RATE = '0.15';
const PUMP_GIVES = 'the suggested pump gives';
const NO_RUN = 'A pump is chosen by its pipe run: put the lengths, sizes, fittings and the lift into the survey.';

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

/**
 * Skimmer and filter by the flow that turns the water over, then the pump against their losses. A pump gives more than is
 * wanted; where they do not take that, they are chosen once more by its flow, and it is ranked against those.
 * @throws DomainError at /displacedVolume
 */
export function designLoop(wanted: Wanted): Loop {
  const { body, takeoff, scopes } = wanted;
  // Readings of no depth are no water either.
  const netM3 = takeoff.waterVolumeM3 ? netWaterM3({ basinM3: takeoff.waterVolumeM3, displacedM3: body.displacedVolume ? toSi(body.displacedVolume) : 0, besidesM3: 0 }) : null;
  const wantedFlow = netM3 === null ? null : netM3 / ((body.turnoverHours ?? USUAL_TURNOVER_HOURS) * 3600);
  const renewed = scopes.includes('circulation');
  const today = !renewed && body.loopFlow ? toSi(body.loopFlow) : null;
  const wish = vesselsAt(wanted, today ?? wantedFlow, today === null ? 'the loop is to give' : 'the loop gives');
  const { vessels, pump } = matched(wanted, wish, { waterM3: netM3, flowM3PerS: wantedFlow });
  const { taken, ...choices } = vessels;
  const pumpFlow = flowOf(pump);
  const filterLine = taken.find(({ part }) => part.attributes?.kind === 'filter');
  return {
    ...choices,
    pump,
    netWaterM3: netM3,
    flowM3PerS: renewed ? pumpFlow : today,
    mediaAreaM2: filterLine === undefined ? null : mediaArea(filterLine),
    warnings: [
      ...taken.flatMap((line) => (vesselLoss(line) === null ? [`The head loss of ${line.part.name} is not in the catalog: the pumps are ranked without it.`] : [])),
      ...(pumpFlow === null ? [] : tooMuchFor(taken, pumpFlow)),
    ],
  };
}

/** The water and the flow that turns it over as wanted; null without readings. */
interface Duty {
  readonly waterM3: number | null;
  readonly flowM3PerS: number | null;
}

/** Vessels that take what the pump gives, where there are such; and the pump against them. */
function matched(wanted: Wanted, wish: Vessels, duty: Duty): { vessels: Vessels; pump: Loop['pump'] } {
  const pump = pumpAgainst(wanted, wish.taken, duty);
  const larger = largerFor(wanted, wish, flowOf(pump));
  if (larger === null) return { vessels: wish, pump };
  const again = pumpAgainst(wanted, larger.taken, duty);
  // Against larger vessels the pump gives yet more; they are told that flow when it does not change them.
  const told = flowOf(again) === null ? larger : vesselsAt(wanted, flowOf(again), PUMP_GIVES);
  return { vessels: sameLines(told.taken, larger.taken) ? told : larger, pump: again };
}

function largerFor(wanted: Wanted, { taken }: Vessels, pumpFlow: number | null): Vessels | null {
  if (pumpFlow === null || tooMuchFor(taken, pumpFlow).length === 0) return null;
  const larger = vesselsAt(wanted, pumpFlow, PUMP_GIVES);
  return larger.taken.length === taken.length ? larger : null;
}

function pumpAgainst({ body, survey, currency, parts }: Wanted, taken: readonly Line[], { waterM3, flowM3PerS }: Duty): Loop['pump'] {
  if (waterM3 === null || flowM3PerS === null) return { missing: NO_VOLUME };
  if (survey.pipeRun === null) return { missing: NO_RUN };
  const vessels: VesselLoss[] = [...taken.map(vesselLoss).filter((loss) => loss !== null), ...(body.vessels ?? []).map(({ name, flow, head }) => ({ name, flowM3PerS: toSi(flow), headM: toSi(head) }))];
  const energyRate = new Decimal(body.energyRate ?? USUAL_ENERGY_RATE);
  return choosePumps(parts.filter(({ kind }) => kind === 'pump'), { flowM3PerS, waterM3, pipeRun: survey.pipeRun, vessels, energyRate, currency });
}

function flowOf(pump: Loop['pump']): number | null {
  return 'missing' in pump ? null : (pump.flowsM3PerS[0] ?? null);
}
