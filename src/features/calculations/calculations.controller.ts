import { Controller } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ApiDocument } from '../../platform/http/api-document.js';
import { ReadRoute } from '../../platform/http/api.js';
import type { Calculation } from './calculation.js';
import { type CalculationSummaryView, CalculationListView } from './calculations.dto.js';
import { schemasOf } from './calculation-schemas.js';
import { CALCULATIONS } from './topics/index.js';

@Controller('v1/calculations')
export class CalculationsController {
  private readonly summaries = new Map<string, CalculationSummaryView>();

  constructor(private readonly document: ApiDocument) {}

  @ReadRoute(CalculationListView, { path: '', roles: EVERYONE, summary: 'List the calculations that one may use, with the schemas of their inputs and outputs' })
  read(@CurrentActor() { role }: Actor): CalculationListView {
    return { items: CALCULATIONS.filter(({ roles }) => (roles ?? EVERYONE).includes(role)).map((one) => this.summaryOf(one)) };
  }

  private summaryOf({ name, title, description }: Calculation): CalculationSummaryView {
    const there = this.summaries.get(name);
    if (there !== undefined) return there;
    const made = { name, title, description, path: `/v1/calculations/${name}`, ...schemasOf(this.document.get(), name) };
    this.summaries.set(name, made);
    return made;
  }
}
