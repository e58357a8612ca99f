import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Problem } from '../../platform/http/problem.js';
import { noSuchReference, notPossible } from '../../platform/http/problems.js';
import { FeaturesService } from '../features/index.js';
import { SitesService } from '../sites/index.js';
import { type SurveyEntity, SurveysService } from '../surveys/index.js';
import type { Asked } from './asked.js';
import type { Place } from './quotes.repository.js';

/** Where the work is, and the survey it was measured by; a quote may do without either. */
export interface QuotePlace extends Place {
  readonly survey: SurveyEntity | null;
}

@Injectable()
export class QuotePlaces {
  constructor(
    private readonly surveys: SurveysService,
    private readonly features: FeaturesService,
    private readonly sites: SitesService,
  ) {}

  /** @throws Problem 422 for a survey or feature that is not there, or a feature that is not the survey's */
  async of(actor: Actor, { surveyId, featureId }: Pick<Asked, 'surveyId' | 'featureId'>): Promise<QuotePlace> {
    const survey = surveyId ? await named('/surveyId', 'survey', this.surveys.find(actor, surveyId)) : null;
    if (survey !== null && featureId && survey.featureId !== featureId.toLowerCase()) {
      throw notPossible('The survey was made at another feature. Leave the feature out, or name a survey of it.', [{ pointer: '/featureId', detail: 'is not the feature of the survey; leave it out' }]);
    }
    const id = survey?.featureId ?? featureId;
    if (!id) return { survey, featureId: null, siteId: null, customerId: null };
    const feature = await named('/featureId', 'feature', this.features.find(actor, id));
    const site = await this.sites.find(actor, feature.siteId);
    return { survey, featureId: feature.id, siteId: site.id, customerId: site.customerId };
  }
}

/** What is not there by an address is a 404; named in a body it is a 422 with its place. */
async function named<T>(pointer: string, what: string, found: Promise<T>): Promise<T> {
  try {
    return await found;
  } catch (error) {
    if (error instanceof Problem && error.code === 'not-found') throw noSuchReference(pointer, what);
    throw error;
  }
}
