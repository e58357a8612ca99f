import { Injectable } from '@nestjs/common';
import { CustomersService } from '../customers/index.js';
import { EquipmentService } from '../equipment/index.js';
import { FeaturesService } from '../features/index.js';
import { SitesService } from '../sites/index.js';
import { SurveysService } from '../surveys/index.js';
import { CUSTOMERS, type DemoSite } from './content/customers.js';
import { type DemoEquipment, EQUIPMENT } from './content/equipment.js';
import { SURVEYS } from './content/surveys.js';
import type { Scene } from './scene.js';

/** Equipment is looked at, and what is new was installed, around this many working days ago. */
const INSTALLED_AGO = 50;

/** Who asks, where the work is, what stands there, and what was measured. */
@Injectable()
export class SeedPlaces {
  constructor(
    private readonly customers: CustomersService,
    private readonly sites: SitesService,
    private readonly features: FeaturesService,
    private readonly equipment: EquipmentService,
    private readonly surveys: SurveysService,
  ) {}

  async execute(scene: Scene): Promise<void> {
    for (const { sites, calledDaysAgo, ...customer } of CUSTOMERS) {
      const called = scene.calendar.moment(calledDaysAgo, '09:30');
      const customerId = scene.newId(`customer ${customer.name}`, called);
      await this.customers.create(scene.as('owner'), { id: customerId, ...customer });
      for (const site of sites) await this.enterSite(scene, called, customerId, site);
    }
    for (const [index, item] of EQUIPMENT.entries()) await this.install(scene, index, item);
    await this.survey(scene);
  }

  private async enterSite(scene: Scene, called: Date, customerId: string, { features, ...site }: DemoSite): Promise<void> {
    const owner = scene.as('owner');
    const siteId = scene.newId(`site ${site.address}`, called);
    await this.sites.create(owner, { id: siteId, customerId, ...site });
    for (const { key, ...feature } of features) {
      await this.features.create(owner, { id: scene.newId(`feature ${key}`, called), siteId, ...feature });
    }
  }

  private async install(scene: Scene, index: number, { feature, ageYears, warrantyYears, ...item }: DemoEquipment): Promise<void> {
    const installedOn = scene.calendar.yearsBefore(scene.calendar.workday(INSTALLED_AGO + index), ageYears);
    await this.equipment.create(scene.as('crew-lead'), {
      id: scene.newId(`equipment ${index}`, scene.calendar.moment(INSTALLED_AGO, '15:00')),
      featureId: scene.id(`feature ${feature}`),
      ...item,
      serialNumber: `${item.make.slice(0, 2).toUpperCase()}-${30_417 + 613 * index}`,
      installedOn,
      warrantyUntil: scene.calendar.yearsBefore(installedOn, -warrantyYears),
    });
  }

  private async survey(scene: Scene): Promise<void> {
    for (const { feature, daysAgo, waterTests = [], ...measured } of SURVEYS) {
      const takenAt = scene.calendar.moment(daysAgo, '10:30').toISOString();
      await this.surveys.create(scene.as('estimator'), {
        id: scene.newId(`survey ${feature}`, scene.calendar.moment(daysAgo, '11:00')),
        featureId: scene.id(`feature ${feature}`),
        surveyedOn: scene.calendar.workday(daysAgo),
        ...measured,
        waterTests: waterTests.map((test) => ({ takenAt, ...test })),
      });
    }
  }
}
