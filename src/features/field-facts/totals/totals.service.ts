import { Injectable } from '@nestjs/common';
import { displayUnit, fromSi } from '../../../domain/quantity/index.js';
import type { Actor } from '../../../platform/auth/actor.js';
import { CompaniesService } from '../../companies/index.js';
import { JobsService } from '../../jobs/index.js';
import { QuotesService } from '../../quotes/index.js';
import { SurveysService } from '../../surveys/index.js';
import { sumDepths } from './sum-depths.js';
import { sumLoads } from './sum-loads.js';
import { sumMaterials } from './sum-materials.js';
import type { FieldTotalsView } from './totals.dto.js';
import { TotalsRepository } from './totals.repository.js';

/** Different materials that are told one by one. */
const MOST_MATERIALS = 500;

/** Holds what the crew found against what the job was planned from: nine statements, however many records there are. */
@Injectable()
export class TotalsService {
  constructor(
    private readonly jobs: JobsService,
    private readonly quotes: QuotesService,
    private readonly surveys: SurveysService,
    private readonly companies: CompaniesService,
    private readonly totals: TotalsRepository,
  ) {}

  /** @throws Problem 404 */
  async ofJob(actor: Actor, jobId: string): Promise<FieldTotalsView> {
    const job = await this.jobs.find(actor, jobId);
    const { revision, lines } = await this.quotes.findAccepted(actor, job.quoteId);
    const { unitSystem } = await this.companies.current(actor);
    const survey = revision.surveyId === null ? null : await this.surveys.find(actor, revision.surveyId);
    const takeoff = survey && this.surveys.takeoff(survey);
    const surveyed = survey && takeoff && { featureId: survey.featureId, readings: survey.probes?.readings.length ?? 0, takeoff };
    const uses = await this.totals.uses(actor, job.id, MOST_MATERIALS + 1);
    const earth = displayUnit('earth', unitSystem);
    const sedimentM3 = takeoff?.sedimentVolumeM3 ?? null;
    return {
      jobId: job.id,
      surveyId: revision.surveyId,
      loads: sumLoads(await this.totals.loads(actor, job.id), unitSystem),
      surveyedSediment: sedimentM3 === null ? null : { value: fromSi(sedimentM3, earth), unit: earth },
      depths: sumDepths(await this.totals.depths(actor, job.id), surveyed, unitSystem),
      materials: sumMaterials(uses.slice(0, MOST_MATERIALS), lines),
      warnings: uses.length > MOST_MATERIALS ? [`More than ${MOST_MATERIALS} different materials were used; the rest is not shown. List the uses to see all.`] : [],
    };
  }
}
