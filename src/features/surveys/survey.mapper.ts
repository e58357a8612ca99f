import { Decimal } from '../../domain/decimal.js';
import { fields } from '../../domain/errors.js';
import { parseOutline, parseProbes } from '../../domain/trade/index.js';
import { atPointer } from '../../platform/http/problems.js';
import type { ResourceEntity } from '../../platform/resources/resource-entity.js';
import { type SurveyInputs, toSurveyInputs } from './inputs/index.js';
import type { SurveyEntity } from './survey.entity.js';
import type { SurveyBody, SurveyView } from './surveys.dto.js';

export function toSurveyView(row: SurveyEntity): SurveyView {
  const { id, featureId, surveyedOn, outline, probes, findings } = row;
  return { id, featureId, surveyedOn, outline, probes, accessFactor: row.accessFactor.toFixed(), findings, ...inputsOf(row), createdAt: row.createdAt.toISOString() };
}

/** The survey as the request that would make it: what a patch is merged into. */
export function toSurveyBody(row: SurveyEntity): SurveyBody {
  const { featureId, surveyedOn, outline, probes, accessFactor, findings } = row;
  return { featureId, surveyedOn, outline, probes, accessFactor: accessFactor.toFixed(), findings, ...inputsOf(row) };
}

/** @throws Problem 400 at every wrong place of outline, probes and inputs, so that nothing is stored that can't be measured */
export function toSurveyRow(body: SurveyBody): Omit<SurveyEntity, keyof ResourceEntity> {
  const measured = atPointer('', () =>
    fields({
      outline: () => parseOutline(body.outline),
      probes: () => (body.probes === undefined || body.probes === null ? null : parseProbes(body.probes)),
    }),
  );
  const inputs = atPointer('', () => toSurveyInputs(body));
  return {
    featureId: body.featureId,
    surveyedOn: body.surveyedOn,
    ...measured,
    accessFactor: new Decimal(body.accessFactor ?? '1'),
    findings: body.findings ?? [],
    ...inputs,
  };
}

function inputsOf({ depthProfile, pipeRun, equipmentCondition, reclaimedMaterials, waterTests }: SurveyInputs): SurveyInputs {
  return { depthProfile, pipeRun, equipmentCondition, reclaimedMaterials, waterTests };
}
