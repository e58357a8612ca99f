import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { atPointer } from '../../platform/http/problems.js';
import { type PartEntity, type PartKind, PartsService } from '../catalog/index.js';
import { type HaulCycleBody, haulHours } from '../calculations/index.js';
import { CompaniesService } from '../companies/index.js';
import { LaborRulesService } from '../labor-rules/index.js';
import { SurveysService } from '../surveys/index.js';
import type { Fitting } from './choice.js';
import type { ProposalBody, ProposalView, ProposedChoiceView, ProposedPartView, ProposedScopeView } from './proposals.dto.js';
import { canBeQuoted, draftOf } from './draft.js';
import { draftSections } from './draft-sections.js';
import { compareHaul, type Haul } from './haul-comparison.js';
import type { HaulComparisonView } from './haul.views.js';
import { CAUTIONS } from './scope-cautions.js';
import { hoursOf, type LaborSetting, proposeLabor, RECLAIM_CODE } from './propose-labor.js';
import { proposeParts, type Wanted } from './propose-parts.js';
import { shortCircuitWarnings } from './short-circuit-warnings.js';
import { type Scope, SCOPES, WORK_OF } from './scopes.js';

const MOST_ALTERNATIVES = 10;
const MOST_RULED_OUT = 20;

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
    const wanted: Wanted = { body, survey, currency: company.currency, takeoff };
    const codeOf = (scope: Scope): string => body.costCodes?.find((own) => own.scope === scope)?.costCode ?? WORK_OF[scope].costCode;
    const rules = await this.rules.inForce(actor, [...scopes.map(codeOf), RECLAIM_CODE], survey.surveyedOn);
    const parts = await this.parts.ofKinds(actor, scopes.flatMap((scope) => WORK_OF[scope].kinds));
    const setting: LaborSetting = { measured: { survey, takeoff }, company, rules };
    const hauls = haul === null ? new Map<Scope, HaulComparisonView>() : compareHaul(scopes, codeOf, haul, setting);
    const items = scopes.map((scope): ProposedScopeView => {
      const costCode = codeOf(scope);
      const warnings: string[] = [];
      const choices = WORK_OF[scope].kinds.filter((kind) => kind !== 'pipe').map((kind) => this.choiceOf(kind, parts, wanted, costCode, warnings));
      const { labor, warnings: ofLabor } = proposeLabor(scope, costCode, choices, setting);
      warnings.push(...ofLabor);
      if (scope === 'circulation') warnings.push(...shortCircuitWarnings(survey));
      warnings.push(...(CAUTIONS[scope] === undefined ? [] : [CAUTIONS[scope]]));
      return { scope, labor, hours: hoursOf(labor), haul: hauls.get(scope) ?? null, parts: choices, warnings };
    });
    return { surveyId: survey.id, rulesAsOf: survey.surveyedOn, items, hours: hoursOf(items.flatMap(({ labor }) => labor)), draft: draftOf(survey.id, items, sections) };
  }

  private choiceOf(kind: PartKind, parts: readonly PartEntity[], wanted: Wanted, costCode: string, warnings: string[]): ProposedChoiceView {
    const proposed = atPointer('', () => proposeParts(kind, parts.filter((part) => part.kind === kind), wanted));
    if ('missing' in proposed) {
      warnings.push(proposed.missing);
      return { kind, suggested: null, alternatives: [], ruledOut: [] };
    }
    const [first, ...others] = proposed.fitting.map((fitting) => toPartView(fitting, costCode));
    if (first === undefined) warnings.push(`The catalog has no ${kind} that would do${proposed.ruledOut.length === 0 ? ': none has attributes of this kind' : ''}.`);
    else if (!canBeQuoted(first)) warnings.push(`A line of a quote does not take ${first.quantity} ${first.unit} of ${first.name}; the draft leaves it out.`);
    return {
      kind,
      suggested: first ?? null,
      alternatives: others.slice(0, MOST_ALTERNATIVES),
      ruledOut: proposed.ruledOut.slice(0, MOST_RULED_OUT).map(({ part, reason }) => ({ partId: part.id, name: part.name, reason })),
    };
  }
}

function haulOf(asked: HaulCycleBody): Haul {
  return { asked, cycle: atPointer('/haul', () => haulHours(asked)) };
}

function toPartView({ part, quantity, why }: Fitting, costCode: string): ProposedPartView {
  return { partId: part.id, name: part.name, quantity: quantity.toFixed(), unit: part.unit, costCode, why };
}
