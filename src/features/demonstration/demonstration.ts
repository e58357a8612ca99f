import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { CompaniesService } from '../companies/index.js';
import { DEMO_ZONE, PEOPLE } from './content/company.js';
import { DemoCalendar } from './demo-calendar.js';
import { demoId } from './demo-id.js';
import { randomPassword, requireUsable } from './demo-password.js';
import { Scene } from './scene.js';
import { SeedBills } from './seed-bills.js';
import { SeedCatalog } from './seed-catalog.js';
import { SeedCosts } from './seed-costs.js';
import { SeedField } from './seed-field.js';
import { SeedJobs } from './seed-jobs.js';
import { SeedPayroll } from './seed-payroll.js';
import { SeedPeople } from './seed-people.js';
import { SeedPhotos } from './seed-photos.js';
import { SeedPlaces } from './seed-places.js';
import { SeedQuotes } from './seed-quotes.js';
import { SeedSchedule } from './seed-schedule.js';

/** How somebody of the demonstration company signs in. */
interface DemoSignIn {
  readonly email: string;
  readonly role: string;
  readonly password: string;
}

/** The same id every time: of two services that start on one empty database, only one can make the company. */
const SERVICE: Actor = { companyId: demoId(new Date('2025-01-01T00:00:00Z'), 'company'), personId: null, role: 'owner', sessionId: null };

/** A company to try everything on. It is made through the same use cases as real work, so it can hold nothing else. */
@Injectable()
export class Demonstration {
  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
    private readonly companies: CompaniesService,
    private readonly people: SeedPeople,
    private readonly catalog: SeedCatalog,
    private readonly places: SeedPlaces,
    private readonly quotes: SeedQuotes,
    private readonly jobs: SeedJobs,
    private readonly photos: SeedPhotos,
    private readonly field: SeedField,
    private readonly schedule: SeedSchedule,
    private readonly payroll: SeedPayroll,
    private readonly costs: SeedCosts,
    private readonly bills: SeedBills,
  ) {}

  /**
   * Makes the demonstration company in a database that serves none, in one transaction: a service that is killed
   * meanwhile leaves nothing behind, and makes it at its next start.
   * @param password of all its people; null takes a random one
   * @returns how to sign in, or null when there was a company already
   * @throws StartError when the password can not be used
   */
  async seedWhenEmpty(password: string | null, say: (line: string) => void): Promise<DemoSignIn[] | null> {
    if (await this.companies.anyThere(SERVICE)) return null;
    const shared = password ?? randomPassword();
    requireUsable(shared);
    say('The database is empty. Making a demonstration company…');
    const made = await this.db.write(SERVICE, async () => {
      if (await this.companies.anyThere(SERVICE)) return false;
      await this.seed(shared);
      return true;
    });
    return made ? PEOPLE.map(({ email, role }) => ({ email, role, password: shared })) : null;
  }

  private async seed(password: string): Promise<void> {
    const scene = new Scene(SERVICE, new DemoCalendar(this.clock.today(DEMO_ZONE), DEMO_ZONE), this.clock);
    await this.people.execute(scene, password);
    await this.catalog.execute(scene);
    await this.places.execute(scene);
    await this.quotes.execute(scene);
    await this.jobs.execute(scene);
    await this.photos.execute(scene);
    await this.field.execute(scene);
    await this.schedule.execute(scene);
    await this.payroll.execute(scene, this.clock.now());
    await this.costs.execute(scene);
    await this.bills.execute(scene);
  }
}
