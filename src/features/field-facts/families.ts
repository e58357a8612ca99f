import type { Type } from '@nestjs/common';
import { EVERYONE, LEADS } from '../../platform/auth/actor.js';
import { ChangeRequestBody, ChangeRequestView } from './change-requests/change-request.dto.js';
import { ChangeRequestsService } from './change-requests/change-requests.service.js';
import { DepthBody, DepthView } from './depths/depth.dto.js';
import { DepthsService } from './depths/depths.service.js';
import { factController } from './fact/fact-controller.js';
import { InstallationBody, InstallationView } from './installations/installation.dto.js';
import { InstallationsService } from './installations/installations.service.js';
import { LoadBody, LoadView } from './loads/load.dto.js';
import { LoadsService } from './loads/loads.service.js';
import { MaterialUseBody, MaterialUseView } from './material-uses/material-use.dto.js';
import { MaterialUsesService } from './material-uses/material-uses.service.js';
import { SignOffBody, SignOffView } from './sign-offs/sign-off.dto.js';
import { SignOffsService } from './sign-offs/sign-offs.service.js';
import { WaterReadingBody, WaterReadingView } from './water-readings/water-reading.dto.js';
import { WaterReadingsService } from './water-readings/water-readings.service.js';

/** Every kind of fact, in the order of the reference. */
export const FACT_SERVICES = [LoadsService, DepthsService, MaterialUsesService, InstallationsService, WaterReadingsService, ChangeRequestsService, SignOffsService] as const;

export const FACT_CONTROLLERS: Type[] = [
  factController(LoadsService, { path: 'loads', body: LoadBody, view: LoadView, roles: EVERYONE, one: 'loads hauled', all: 'the loads hauled', description: 'What left the site: several loads alike may be one record. It books no cost.' }),
  factController(DepthsService, { path: 'depths', body: DepthBody, view: DepthView, roles: EVERYONE, one: 'a depth found in place', all: 'the depths found in place', description: 'What the rod says once the pond is opened up. It changes neither survey nor quote.' }),
  factController(MaterialUsesService, { path: 'material-uses', body: MaterialUseBody, view: MaterialUseView, roles: EVERYONE, one: 'material used', all: 'the material used', description: 'A part of the catalog, or anything else in words. It books no cost.' }),
  factController(InstallationsService, { path: 'installations', body: InstallationBody, view: InstallationView, roles: EVERYONE, one: 'equipment installed', all: 'the equipment installed', description: 'Makes the item of equipment at the feature, with the id of this record, unless one with that serial number is there. Voiding the record takes the item out again, unless it was changed since or something else names it. Work on circuits and gas is for those licensed for it.' }),
  factController(WaterReadingsService, { path: 'water-readings', body: WaterReadingBody, view: WaterReadingView, roles: EVERYONE, one: 'a water reading', all: 'the water readings', description: 'At least one figure.' }),
  factController(ChangeRequestsService, { path: 'change-requests', body: ChangeRequestBody, view: ChangeRequestView, roles: EVERYONE, one: 'a request for a change', all: 'the requests for changes', description: 'What the contract does not cover, for the office to answer.' }),
  factController(SignOffsService, { path: 'sign-offs', body: SignOffBody, view: SignOffView, roles: LEADS, one: 'a customer\'s sign-off', all: 'the customers\' sign-offs', description: 'At substantial completion. Open punch-list items do not stop it: what is still open belongs into the statement.' }),
];
