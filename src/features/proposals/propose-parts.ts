import { Decimal } from '../../domain/decimal.js';
import { toSi } from '../../domain/quantity/index.js';
import { straightSheet, USUAL_OVERLAP_M } from '../../domain/trade/liner/index.js';
import { USUAL_EDGE } from '../../domain/trade/stone/index.js';
import { celsiusOf } from '../../platform/http/fields/index.js';
import type { PartEntity, PartKind } from '../catalog/index.js';
import { greatestDepthM, reclaimedStoneKg } from '../surveys/index.js';
import type { Choice } from './choice.js';
import { designLoop, type Loop } from './loop.js';
import type { Missing } from './loop-vessels.js';
import { chooseDosers } from './parts/dosers.js';
import { chooseEdgeStone } from './parts/edge-stone.js';
import { chooseFish } from './parts/fish.js';
import { mediaWarnings } from './parts/media.js';
import { pipeNeeds } from './parts/pipe-needs.js';
import { chooseFittings, choosePipe } from './parts/pipes.js';
import { choosePlants } from './parts/plants.js';
import { chooseSheets, type Seam } from './parts/sheets.js';
import { feet, inches } from './parts/shown.js';
import { chooseSpillways, otherPump } from './parts/spillways.js';
import type { Scope } from './scopes.js';
import type { Wanted } from './wanted.js';

/** How much strips lap over at a seam: common practice. */
const USUAL_LAP_M = { liner: 3 * 0.0254, underlayment: 6 * 0.0254 } as const;
const FOOT_M = 0.3048;
const USUAL_PLANT_COVER = 0.5;

const FOLDS = 'The sheet is for sides that go straight down to the greatest depth. Folds in corners and curves, and laps under a waterfall or stream, come on top.';
const ONLY_COUNTED = 'Reclaimed stones that were only counted are not taken off what is bought: weigh them, or measure the heap.';

/** One thing that a scope takes from the catalog. */
export interface Need {
  readonly kind: PartKind;
  readonly what: string;
  readonly proposed: Choice | Missing;
}

export interface ProposedParts {
  readonly needs: readonly Need[];
  readonly warnings: readonly string[];
}

/** Answers for each scope what it takes from the catalog; the loop is designed once for all. @throws DomainError at /displacedVolume */
export function partsProposer(wanted: Wanted): (scope: Scope) => ProposedParts {
  const loop = designLoop(wanted);
  return (scope) => PROPOSE[scope]?.(wanted, loop) ?? { needs: [], warnings: [] };
}

type Propose = (wanted: Wanted, loop: Loop) => ProposedParts;

const only = (kind: PartKind, what: string, proposed: Choice | Missing, warnings: readonly string[] = []): ProposedParts => ({ needs: [{ kind, what, proposed }], warnings });
const ofKind = ({ parts }: Wanted, kind: PartKind): PartEntity[] => parts.filter((part) => part.kind === kind);

const sheets: Propose = (wanted) => {
  const { body, survey, takeoff } = wanted;
  const sheet = straightSheet(survey.outline, greatestDepthM(survey, takeoff), body.linerOverlap ? toSi(body.linerOverlap) : USUAL_OVERLAP_M);
  const choose = (kind: keyof typeof USUAL_LAP_M): Choice | Missing =>
    sheet === null
      ? { missing: 'The sheet needs a length and a width, and a depth: measure the outline, and readings or a depth profile.' }
      : chooseSheets(ofKind(wanted, kind), sheet, body.seamLap ? toSi(body.seamLap) : USUAL_LAP_M[kind], seamOf(kind, body.seamCostPerFoot));
  return { needs: [{ kind: 'liner', what: 'liner', proposed: choose('liner') }, { kind: 'underlayment', what: 'underlayment', proposed: choose('underlayment') }], warnings: sheet === null ? [] : [FOLDS] };
};

/** Underlayment is only laid over itself. */
function seamOf(kind: keyof typeof USUAL_LAP_M, costPerFoot: string | null | undefined): Seam {
  return kind === 'liner' ? { leaks: true, pricePerM: new Decimal(costPerFoot ?? 0).div(FOOT_M) } : { leaks: false, pricePerM: new Decimal(0) };
}

const edge: Propose = (wanted) => {
  const { body, survey, takeoff } = wanted;
  return only('stone', 'stone for the edge', chooseEdgeStone(ofKind(wanted, 'stone'), {
    lengthM: takeoff.perimeterM,
    heightM: body.edgeHeight ? toSi(body.edgeHeight) : USUAL_EDGE.heightM,
    thicknessM: body.edgeThickness ? toSi(body.edgeThickness) : USUAL_EDGE.thicknessM,
    reclaimedKg: reclaimedStoneKg(survey),
  }), survey.reclaimedMaterials.some(({ kind, quantity }) => kind === 'stone' && quantity.unit === 'each') ? [ONLY_COUNTED] : []);
};

const circulation: Propose = (wanted, loop) => {
  const { pipeRun } = wanted.survey;
  const pump: Need = { kind: 'pump', what: 'pump', proposed: loop.pump };
  if (pipeRun === null) return { needs: [pump], warnings: [...loop.warnings] };
  const [pipes, fittings] = [ofKind(wanted, 'pipe'), ofKind(wanted, 'fitting')];
  const counted = pipeNeeds(pipeRun).flatMap((size): Need[] => [
    ...(size.lengthM > 0 ? [{ kind: 'pipe' as const, what: `${feet(size.lengthM)} of pipe, ${inches(size.diameterM)} inside`, proposed: choosePipe(pipes, size.diameterM, size.lengthM) }] : []),
    ...size.fittings.map(({ kind, count }): Need => ({ kind: 'fitting', what: `${count} ${kind}, ${inches(size.diameterM)} inside`, proposed: chooseFittings(fittings, kind, size.diameterM, count) })),
  ]);
  return { needs: [pump, ...counted], warnings: loop.warnings };
};

const waterfall: Propose = (wanted, { flowM3PerS, pump }) => {
  if (flowM3PerS === null) return only('spillway', 'spillway', { missing: wanted.scopes.includes('circulation') ? 'A spillway is chosen by the flow of its pump, and no pump could be suggested.' : 'A spillway is chosen by the flow of its pump: put circulation into the scope, or give loopFlow.' });
  const [spillways, look] = [ofKind(wanted, 'spillway'), wanted.body.waterfallLook ?? 'sheet'];
  const choice = chooseSpillways(spillways, flowM3PerS, look);
  return only('spillway', 'spillway', choice, choice.fitting.length > 0 || 'missing' in pump ? [] : otherPump(spillways, look, pump));
};

const plants: Propose = (wanted) => {
  const { body, survey, takeoff } = wanted;
  const reclaimed = survey.reclaimedMaterials.filter(({ kind, quantity }) => kind === 'plants' && quantity.unit === 'each').reduce((sum, { quantity }) => sum + Math.floor(quantity.value), 0);
  const choice = choosePlants(ofKind(wanted, 'plant'), {
    surfaceM2: takeoff.surfaceAreaM2,
    cover: body.plantCover ?? USUAL_PLANT_COVER,
    reclaimed,
    depthProfile: survey.depthProfile,
    deepestM: greatestDepthM(survey, takeoff),
  });
  return only('plant', 'plants', choice, ['Plants are counted as if all were of one sort; mix sorts for their depths and seasons. Plant nothing that is invasive or forbidden where the pond is: state lists decide.']);
};

const fish: Propose = (wanted, { netWaterM3, mediaAreaM2 }) => {
  const { body, survey, takeoff } = wanted;
  const legal = 'Stock only species that are legal in the state, from certified stock, and never release any.';
  if (netWaterM3 === null) return only('fish', 'fish', { missing: 'Fish go by the water volume, which needs rod readings in the survey.' }, [legal]);
  const choice = chooseFish(ofKind(wanted, 'fish'), {
    netWaterM3,
    surfaceM2: takeoff.surfaceAreaM2,
    mediaAreaM2,
    aerated: body.aerated ?? false,
    thereKg: body.fishThere ? toSi(body.fishThere) : 0,
    temperaturesC: survey.waterTests.flatMap(({ temperature }) => (temperature ? [celsiusOf(temperature)] : [])),
  });
  return only('fish', 'fish', choice, [legal, ...choice.warnings]);
};

const PROPOSE: Readonly<Partial<Record<Scope, Propose>>> = {
  liner: sheets,
  edge,
  skimmer: (_, { skimmer }) => only('skimmer', 'skimmer', skimmer),
  circulation,
  filter: ({ body }, { filter, mediaAreaM2 }) => only('filter', 'filter', filter, 'missing' in filter || filter.fitting.length === 0 ? [] : mediaWarnings(mediaAreaM2, body.fishThere ? toSi(body.fishThere) : 0)),
  waterfall,
  doser: (wanted, { netWaterM3 }) => only('doser', 'doser', chooseDosers(ofKind(wanted, 'doser'), netWaterM3)),
  plants,
  fish,
};
