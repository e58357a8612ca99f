import { Injectable } from '@nestjs/common';
import { CompaniesService } from '../companies/index.js';
import { PeopleService } from '../people/index.js';
import { SetPassword } from '../sessions/index.js';
import { COMPANY, PEOPLE } from './content/company.js';
import type { Scene } from './scene.js';

/** The company, and everybody who works for it, with one password. */
@Injectable()
export class SeedPeople {
  constructor(
    private readonly companies: CompaniesService,
    private readonly people: PeopleService,
    private readonly passwords: SetPassword,
  ) {}

  async execute(scene: Scene, password: string): Promise<void> {
    await this.companies.create(COMPANY, scene.service.companyId);
    for (const [index, { key, ...body }] of PEOPLE.entries()) {
      const id = scene.newId(`person ${key}`, scene.calendar.moment(600 - index, '08:00'));
      await this.people.create(scene.service, { id, ...body });
      await this.passwords.execute(scene.service, id, { password });
      scene.enter(key, id, body.role);
    }
  }
}
