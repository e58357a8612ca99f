import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { atPointer } from '../../platform/http/problems.js';
import { MOST_OF_A_KIND, type PartEntity, PartsService } from '../catalog/index.js';
import { type HaulCycleBody, haulHours } from '../calculations/index.js';
import { CompaniesService } from '../companies/index.js';
import { LaborRulesService } from '../labor-rules/index.js';
import { SurveysService } from '../surveys/index.js';
import { draftOf } from './draft.js';
import { draftSections } from './draft-sections.js';
import { compareHaul, type Haul } from './haul-comparison.js';
import type { HaulComparisonView } from './haul.views.js';
import { CAUTIONS } from './scope-cautions.js';
import { hoursOf, type LaborSetting, proposeLabor, RECLAIM_CODE } from './propose-labor.js';
import { namedIds, namedParts } from './named-parts.js';
import { proposeChoices } from './propose-choices.js';
import { partsProposer } from './propose-parts.js';
import type { ProposalBody, ProposalView, ProposedScopeView } from './proposals.dto.js';
import { shortCircuitWarnings } from './short-circuit-warnings.js';
import { type Scope, SCOPES, WORK_OF } from './scopes.js';

/** Suggests what a survey's scope takes: labor by the rules in force, parts from the catalog. Keeps nothing. */
@Injectable()
export class ProposeWork {
  constructor(
    private readonly surveys: SurveysService,
    private readonly rules: LaborRulesService,
    private readonly parts: PartsService,
    private readonly companies: CompaniesService,
  ) {}

  /** @throws Problem 404 for the survey, 400 for a haul, pipe run or pump curve that can not be */
  async execute(actor: Actor, surveyId: string, body: ProposalBody): Promise<ProposalView> {
    const survey = await this.surveys.find(actor, surveyId);
    const scopes = SCOPES.filter((scope) => body.scope.includes(scope));
    const sections = draftSections(scopes, body.sections ?? []);
    const haul = body.haul ? haulOf(body.haul) : null;
    const company = await this.companies.current(actor);
    const takeoff = this.surveys.takeoff(survey);
    const codeOf = (scope: Scope): string => body.costCodes?.find((own) => own.scope === scope)?.costCode ?? WORK_OF[scope].costCode;
    const rules = await this.rules.inForce(actor, [...scopes.map(codeOf), RECLAIM_CODE], survey.surveyedOn);
    const parts = await this.parts.ofKinds(actor, scopes.flatMap((scope) => WORK_OF[scope].kinds));
    const named = namedParts(body, await this.parts.findMany(actor, namedIds(body)));
    const partsFor = atPointer('', () => partsProposer({ body, survey, takeoff, currency: company.currency, scopes, parts, named }));
    const setting: LaborSetting = { measured: { survey, takeoff }, company, rules };
    const hauls = haul === null ? new Map<Scope, HaulComparisonView>() : compareHaul(scopes, codeOf, haul, setting);
    const items = scopes.map((scope): ProposedScopeView => {
      const costCode = codeOf(scope);
      const { choices, warnings } = proposeChoices(atPointer('', () => partsFor(scope)), costCode);
      const { labor, warnings: ofLabor } = proposeLabor(scope, costCode, choices, setting);
      warnings.push(...ofLabor, ...manyWarnings(scope, parts));
      if (scope === 'circulation') warnings.push(...shortCircuitWarnings(survey));
      warnings.push(...(CAUTIONS[scope] === undefined ? [] : [CAUTIONS[scope]]));
      return { scope, labor, hours: hoursOf(labor), haul: hauls.get(scope) ?? null, parts: choices, warnings };
    });
    return { surveyId: survey.id, rulesAsOf: survey.surveyedOn, items, hours: hoursOf(items.flatMap(({ labor }) => labor)), draft: draftOf(survey.id, items, sections) };
  }
}

/** Parts that were not looked at must not look as if they were not there. */
function manyWarnings(scope: Scope, parts: readonly PartEntity[]): string[] {
  const many = WORK_OF[scope].kinds.filter((kind) => parts.filter((part) => part.kind === kind).length >= MOST_OF_A_KIND);
  return many.map((kind) => `The catalog has ${MOST_OF_A_KIND} or more parts of the kind ${kind}: only the first ${MOST_OF_A_KIND} by stock number were looked at.`);
}

function haulOf(asked: HaulCycleBody): Haul {
  return { asked, cycle: atPointer('/haul', () => haulHours(asked)) };
}
