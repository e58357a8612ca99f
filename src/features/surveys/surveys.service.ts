import { Injectable } from '@nestjs/common';
import { takeoff, type Takeoff } from '../../domain/trade/index.js';
import type { Actor } from '../../platform/auth/actor.js';
import type { Page } from '../../platform/http/lists.js';
import type { Made } from '../../platform/resources/resource-store.js';
import type { SurveyEntity } from './survey.entity.js';
import { toSurveyRow } from './survey.mapper.js';
import type { SurveyBody, SurveyListQuery, SurveySummary } from './surveys.dto.js';
import { SurveysRepository } from './surveys.repository.js';

@Injectable()
export class SurveysService {
  constructor(private readonly surveys: SurveysRepository) {}

  async create(actor: Actor, body: SurveyBody): Promise<Made<SurveyEntity>> {
    return this.surveys.create(actor, body, toSurveyRow(body));
  }

  /** @throws Problem 404, alike for a survey of another company and for none */
  find(actor: Actor, id: string): Promise<SurveyEntity> {
    return this.surveys.find(actor, id);
  }

  list(actor: Actor, query: SurveyListQuery): Promise<Page<SurveySummary>> {
    return this.surveys.summaries(actor, query);
  }

  async update(actor: Actor, id: string, version: number, body: SurveyBody): Promise<SurveyEntity> {
    return this.surveys.update(actor, id, version, toSurveyRow(body));
  }

  /** The quantities of a stored survey, in SI. They can be computed: nothing else is ever stored. */
  takeoff({ outline, probes }: Pick<SurveyEntity, 'outline' | 'probes'>): Takeoff {
    return takeoff({ outline, probes });
  }
}
