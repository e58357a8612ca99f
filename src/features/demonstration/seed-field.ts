import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { ChangeRequestsService, DepthsService, InstallationsService, LoadsService, MaterialUsesService, PunchItemsService, SignOffsService, WaterReadingsService } from '../field-facts/index.js';
import { CHANGE_REQUESTS, DEPTHS, INSTALLATIONS, LOADS, MATERIAL_USES, PUNCH_ITEMS, SIGN_OFFS, type Told, WATER_READINGS } from './content/field-facts.js';
import type { Scene } from './scene.js';

/** What every fact is sent with. */
interface Common {
  readonly id: string;
  readonly jobId: string;
}

/** What the crews took down on the spot: at least one of every kind. */
@Injectable()
export class SeedField {
  constructor(
    private readonly loads: LoadsService,
    private readonly depths: DepthsService,
    private readonly materials: MaterialUsesService,
    private readonly installations: InstallationsService,
    private readonly water: WaterReadingsService,
    private readonly requests: ChangeRequestsService,
    private readonly punchItems: PunchItemsService,
    private readonly signOffs: SignOffsService,
  ) {}

  async execute(scene: Scene): Promise<void> {
    await takeDown(scene, 'load', LOADS, (actor, common, hauledAt, { body }) => this.loads.record(actor, { ...common, hauledAt, ...body }));
    await takeDown(scene, 'depth', DEPTHS, (actor, common, foundAt, { body }) => this.depths.record(actor, { ...common, foundAt, ...body }));
    await takeDown(scene, 'material', MATERIAL_USES, (actor, common, usedAt, { body, sku }) =>
      this.materials.record(actor, { ...common, usedAt, partId: sku === undefined ? null : scene.id(`part ${sku}`), ...body }),
    );
    await takeDown(scene, 'installation', INSTALLATIONS, (actor, common, installedAt, { body }) => this.installations.record(actor, { ...common, installedAt, ...body }));
    await takeDown(scene, 'water', WATER_READINGS, (actor, common, takenAt, { body }) => this.water.record(actor, { ...common, takenAt, ...body }));
    await takeDown(scene, 'request', CHANGE_REQUESTS, async (actor, common, foundAt, { body, photos }) =>
      this.requests.record(actor, { ...common, foundAt, attachmentIds: photos.map((name) => scene.id(`photo ${name}`)), ...body }),
    );
    await takeDown(scene, 'punch', PUNCH_ITEMS, (actor, common, _at, { body }) => this.punchItems.add(actor, { ...common, ...body }));
    await takeDown(scene, 'sign-off', SIGN_OFFS, (actor, common, signedAt, { body }) => this.signOffs.record(actor, { ...common, signedAt, ...body }));
    await this.answer(scene);
  }

  /** What came of some of it later. */
  private async answer(scene: Scene): Promise<void> {
    for (const [index, { answered }] of CHANGE_REQUESTS.entries()) {
      if (answered === undefined) continue;
      const { daysAgo, at, ...answer } = answered;
      await scene.on(scene.calendar.moment(daysAgo, at), () => this.requests.answer(scene.as('estimator'), scene.id(`request ${index}`), answer));
    }
    for (const [index, { done }] of PUNCH_ITEMS.entries()) {
      if (done === undefined) continue;
      await scene.on(scene.calendar.moment(done.daysAgo, done.at), () => this.punchItems.change(scene.as(done.by), scene.id(`punch ${index}`), 1, { state: 'done' }));
    }
  }
}

async function takeDown<Fact extends Told>(scene: Scene, name: string, facts: readonly Fact[], record: (actor: Actor, common: Common, at: string, fact: Fact) => Promise<unknown>): Promise<void> {
  for (const [index, fact] of facts.entries()) {
    const moment = scene.calendar.moment(fact.daysAgo, fact.at);
    const common = { id: scene.newId(`${name} ${index}`, moment), jobId: scene.id(`job ${fact.quote}`) };
    await scene.on(moment, () => record(scene.as(fact.by), common, moment.toISOString(), fact));
  }
}
