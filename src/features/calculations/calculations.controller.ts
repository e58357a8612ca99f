import { Controller } from '@nestjs/common';
import { EVERYONE } from '../../platform/auth/actor.js';
import { ApiDocument } from '../../platform/http/api-document.js';
import { ReadRoute } from '../../platform/http/api.js';
import { CalculationListView } from './calculations.dto.js';
import { schemasOf } from './calculation-schemas.js';
import { CALCULATIONS } from './topics/index.js';

@Controller('v1/calculations')
export class CalculationsController {
  private list: CalculationListView | null = null;

  constructor(private readonly document: ApiDocument) {}

  @ReadRoute(CalculationListView, { path: '', roles: EVERYONE, summary: 'List the calculations, with the schemas of their inputs and outputs' })
  read(): CalculationListView {
    this.list ??= { items: CALCULATIONS.map((one) => ({ name: one.name, title: one.title, description: one.description, path: `/v1/calculations/${one.name}`, ...schemasOf(this.document.get(), one.name) })) };
    return this.list;
  }
}
