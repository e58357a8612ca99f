import { Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { Reply } from '../../platform/http/reply.js';
import { CompaniesService } from '../companies/index.js';
import { profileWarnings } from './profile-warnings.js';
import { toByPlaceView } from './sediment-by-place.mapper.js';
import { SurveysService } from './surveys.service.js';
import { TakeoffQuery, TakeoffView } from './takeoff.dto.js';
import { takeoffMaterials } from './takeoff-materials.js';
import { toTakeoffView } from './takeoff.mapper.js';
import { truckOf } from './takeoff-truck.js';

@Controller('v1/surveys')
export class TakeoffController {
  constructor(
    private readonly surveys: SurveysService,
    private readonly companies: CompaniesService,
  ) {}

  @ReadRoute(TakeoffView, { path: ':id/takeoff', roles: EVERYONE, summary: 'Read the takeoff of a survey', description: 'Computed from the survey as it stands: volumes are the surface area times the mean of the readings. Readings with places are interpolated beside it. What the survey does not say (density, draining, edge, truck) is assumed and named in the working.' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string, @Query() query: TakeoffQuery): Promise<Reply<TakeoffView>> {
    const survey = await this.surveys.find(actor, id);
    const units = query.units ?? (await this.companies.current(actor)).unitSystem;
    const computed = this.surveys.takeoff(survey);
    const takeoff = { ...computed, warnings: [...computed.warnings, ...profileWarnings(survey, computed)] };
    const truck = truckOf(query.truckVolume, query.truckPayload, units);
    // The company can change its units, and the truck is asked for, so they are part of what the tag stands for.
    const etag = [survey.version, units, query.truckVolume ?? '', query.truckPayload ?? ''].join('-');
    return new Reply(toTakeoffView(id, takeoff, takeoffMaterials(survey, takeoff, truck, units), toByPlaceView(survey, units), units), null, { etag: `"${etag}"` });
  }
}
