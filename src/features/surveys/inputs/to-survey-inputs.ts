import { DomainError, fields, within } from '../../../domain/errors.js';
import { toSi } from '../../../domain/quantity/index.js';
import { filled } from '../../../platform/http/filled.js';
import type { DepthPointBody } from './depth-profile.dto.js';
import type { EquipmentConditionBody } from './equipment-condition.dto.js';
import type { PipeRunBody } from './pipe-run.dto.js';
import type { AskedInputs, SurveyInputs } from './survey-inputs.js';
import type { WaterTestBody } from './water-test.dto.js';

/**
 * The inputs as they are stored.
 * @throws DomainError at every place that a field can't refuse alone, such as /depthProfile/3/distance
 */
export function toSurveyInputs(asked: AskedInputs): SurveyInputs {
  return fields({
    depthProfile: () => (asked.depthProfile ? inOrder(filled(asked.depthProfile)) : null),
    pipeRun: () => (asked.pipeRun ? inPairs(filled(asked.pipeRun)) : null),
    equipmentCondition: () => eachOnce(filled(asked.equipmentCondition ?? []).map((entry, i) => within(`/${i}`, () => named(entry)))),
    reclaimedMaterials: () => filled(asked.reclaimedMaterials ?? []),
    waterTests: () => filled(asked.waterTests ?? []).map((test, i) => within(`/${i}`, () => telling(test))),
  });
}

/** The same distance twice is the face of a shelf. */
function inOrder(points: DepthPointBody[]): DepthPointBody[] {
  const back = points.findIndex(({ distance }, i) => i > 0 && toSi(distance) < toSi((points[i - 1] as DepthPointBody).distance));
  if (back < 0) return points;
  throw DomainError.at(`/${back}/distance`, 'must not be less than the distance of the point before; give the points in the order they lie in');
}

/** One place alone tells no distance, and would look as if the circulation had been checked. */
function inPairs(run: PipeRunBody): PipeRunBody {
  if (run.suctionAt === undefined && run.dischargeAt !== undefined) throw DomainError.at('/suctionAt', 'is missing; give the place of the suction too, or leave dischargeAt out');
  if (run.dischargeAt === undefined && run.suctionAt !== undefined) throw DomainError.at('/dischargeAt', 'is missing; give the place of the discharge too, or leave suctionAt out');
  return run;
}

function named(entry: EquipmentConditionBody): EquipmentConditionBody {
  if (entry.equipmentId !== undefined || entry.kind !== undefined) return entry;
  throw DomainError.at('/kind', 'is missing; name the equipment by its id, or say what kind it is');
}

/** Two conditions of one pump would contradict each other, and nobody could tell which one holds. */
function eachOnce(entries: EquipmentConditionBody[]): EquipmentConditionBody[] {
  const first = new Map<string, number>();
  entries.forEach(({ equipmentId }, i) => {
    if (!equipmentId) return;
    const id = equipmentId.toLowerCase();
    const earlier = first.get(id);
    if (earlier !== undefined) throw DomainError.at(`/${i}/equipmentId`, `is the piece of entry ${earlier} already; say all that was found of it in one entry`);
    first.set(id, i);
  });
  return entries;
}

function telling(test: WaterTestBody): WaterTestBody {
  if (Object.keys(test).length > 1) return test;
  throw DomainError.at('', 'has no figure; give at least one, or leave the test out');
}
