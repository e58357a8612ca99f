import { Injectable } from '@nestjs/common';
import { takeoff, type Takeoff } from '../../domain/trade/index.js';
import type { Actor } from '../../platform/auth/actor.js';
import type { Page } from '../../platform/http/lists.js';
import { noSuchReference } from '../../platform/http/problems.js';
import type { Made } from '../../platform/resources/resource-store.js';
import { EquipmentService } from '../equipment/index.js';
import type { SurveyEntity } from './survey.entity.js';
import { toSurveyRow } from './survey.mapper.js';
import type { SurveyBody, SurveyListQuery, SurveySummary } from './surveys.dto.js';
import { SurveysRepository } from './surveys.repository.js';

@Injectable()
export class SurveysService {
  constructor(
    private readonly surveys: SurveysRepository,
    private readonly equipment: EquipmentService,
  ) {}

  /** @throws Problem 400 for what can't be measured, 422 for a feature or equipment that is not there */
  async create(actor: Actor, body: SurveyBody): Promise<Made<SurveyEntity>> {
    const row = toSurveyRow(body);
    await this.requireEquipment(actor, row.equipmentCondition);
    return this.surveys.create(actor, body, row);
  }

  /** @throws Problem 404, alike for a survey of another company and for none */
  find(actor: Actor, id: string): Promise<SurveyEntity> {
    return this.surveys.find(actor, id);
  }

  /** Whether any survey names the piece of equipment. */
  nameEquipment(actor: Actor, equipmentId: string): Promise<boolean> {
    return this.surveys.nameEquipment(actor, equipmentId);
  }

  list(actor: Actor, query: SurveyListQuery): Promise<Page<SurveySummary>> {
    return this.surveys.summaries(actor, query);
  }

  async update(actor: Actor, id: string, version: number, body: SurveyBody): Promise<SurveyEntity> {
    const row = toSurveyRow(body);
    await this.requireEquipment(actor, row.equipmentCondition);
    return this.surveys.update(actor, id, version, row);
  }

  /** The quantities of a stored survey, in SI. They can be computed: nothing else is ever stored. */
  takeoff({ outline, probes }: Pick<SurveyEntity, 'outline' | 'probes'>): Takeoff {
    return takeoff({ outline, probes });
  }

  /** A list in one column has no foreign keys, so its ids are looked up: all of them at once. */
  private async requireEquipment(actor: Actor, entries: SurveyEntity['equipmentCondition']): Promise<void> {
    const there = await this.equipment.findMany(actor, entries.flatMap(({ equipmentId }) => equipmentId ?? []));
    entries.forEach(({ equipmentId }, i) => {
      if (equipmentId && !there.has(equipmentId.toLowerCase())) throw noSuchReference(`/equipmentCondition/${i}/equipmentId`, 'piece of equipment');
    });
  }
}
