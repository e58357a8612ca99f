import { Decimal } from '../../domain/decimal.js';
import { toSi } from '../../domain/quantity/index.js';
import type { Takeoff } from '../../domain/trade/index.js';
import { straightSheet, USUAL_OVERLAP_M } from '../../domain/trade/liner/index.js';
import { USUAL_EDGE } from '../../domain/trade/stone/index.js';
import type { PartEntity, PartKind } from '../catalog/index.js';
import { greatestDepthM, reclaimedStoneKg, type SurveyEntity } from '../surveys/index.js';
import type { Choice } from './choice.js';
import { chooseDosers } from './parts/dosers.js';
import { chooseEdgeStone } from './parts/edge-stone.js';
import { chooseByFlow } from './parts/flow-parts.js';
import { choosePumps } from './parts/pumps.js';
import { chooseSheets } from './parts/sheets.js';
import type { ProposalBody } from './proposals.dto.js';

const USUAL_TURNOVER_HOURS = 2;
const USUAL_ENERGY_RATE = '0.15';

export interface Wanted {
  readonly body: ProposalBody;
  readonly survey: SurveyEntity;
  readonly takeoff: Takeoff;
  readonly currency: string;
}

/** What is chosen for a kind of part, or what has to be measured first. */
export type Proposed = Choice | { readonly missing: string };

/** @throws DomainError for a pipe run or a pump curve that can not be */
export function proposeParts(kind: PartKind, parts: readonly PartEntity[], { body, survey, takeoff, currency }: Wanted): Proposed {
  const flowM3PerS = takeoff.waterVolumeM3 === null ? null : takeoff.waterVolumeM3 / ((body.turnoverHours ?? USUAL_TURNOVER_HOURS) * 3600);
  switch (kind) {
    case 'liner':
    case 'underlayment': {
      const sheet = straightSheet(survey.outline, greatestDepthM(survey, takeoff), body.linerOverlap ? toSi(body.linerOverlap) : USUAL_OVERLAP_M);
      return sheet === null ? { missing: 'The sheet needs a length and a width, and a depth: measure the outline, and readings or a depth profile.' } : chooseSheets(parts, sheet);
    }
    case 'stone':
      return chooseEdgeStone(parts, {
        lengthM: takeoff.perimeterM,
        heightM: body.edgeHeight ? toSi(body.edgeHeight) : USUAL_EDGE.heightM,
        thicknessM: body.edgeThickness ? toSi(body.edgeThickness) : USUAL_EDGE.thicknessM,
        reclaimedKg: reclaimedStoneKg(survey),
      });
    case 'skimmer':
    case 'filter':
      return flowM3PerS === null ? { missing: NO_VOLUME } : chooseByFlow(parts, flowM3PerS);
    case 'pump':
      if (flowM3PerS === null) return { missing: NO_VOLUME };
      if (survey.pipeRun === null) return { missing: 'A pump is chosen by its pipe run: put the lengths, sizes, fittings and the lift into the survey.' };
      return choosePumps(parts, { flowM3PerS, pipeRun: survey.pipeRun, energyRate: new Decimal(body.energyRate ?? USUAL_ENERGY_RATE), currency });
    case 'doser':
      return chooseDosers(parts);
    default:
      return { fitting: [], ruledOut: [] };
  }
}

const NO_VOLUME = 'The flow goes by the water volume, which needs rod readings in the survey.';
