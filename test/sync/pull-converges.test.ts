import fc from 'fast-check';
import { JobCrew } from '../../src/features/jobs/index.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';
import { hour, TestPhone } from './support.js';

/** Something that happens in the company, or a page that a phone pulls; numbers choose among what there is. */
const happening = fc.oneof(
  fc.record({ what: fc.constantFrom('log', 'move', 'hand-over', 'void', 'join', 'join', 'leave', 'leave'), of: fc.nat(), to: fc.nat() }),
  fc.record({ what: fc.constant('page'), of: fc.nat(), to: fc.integer({ min: 1, max: 4 }) }),
);

describe('phones that pull now and then', () => {
  let test: TestApp;

  beforeAll(async () => {
    test = await startTestApp();
  });
  afterAll(() => test.close());

  it('have in the end what a new one gets, whatever happened to hours and crews between their pages', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(happening, { minLength: 30, maxLength: 60 }), async (happenings) => {
        const company = await makeTestCompany(test);
        const jobs = [await makeTestJob(test, company), await makeTestJob(test, company), await makeTestJob(test, company)];
        const people = [company.crew, company.crewLead, company.estimator];
        const phones = people.map((person) => new TestPhone(person, test));
        const entries: string[] = [];
        for (const [slot, one] of happenings.entries()) await carryOut(company, { jobs, people, phones, entries, slot }, one);
        for (const phone of phones) {
          await phone.pull(3);
          const fresh = new TestPhone(phone.client, test);
          await fresh.pull();
          expect(contents(phone)).toEqual(contents(fresh));
        }
      }),
      // A phone's work is many requests: made smaller step by step, a counterexample would take longer than it saves.
      { numRuns: 4, endOnFailure: true },
    );
  }, 120_000);

  interface There {
    readonly jobs: readonly string[];
    readonly people: readonly Client[];
    readonly phones: readonly TestPhone[];
    readonly entries: string[];
    readonly slot: number;
  }

  async function carryOut(company: TestCompany, { jobs, people, phones, entries, slot }: There, { what, of, to }: { what: string; of: number; to: number }): Promise<void> {
    const at = <T>(list: readonly T[], n: number): T => list[n % list.length] as T;
    const crew = test.app.get(JobCrew, { strict: false });
    const entry = `/v1/time-entries/${at(entries, of)}`;
    if (what === 'page') await at(phones, of).pullPage(to);
    else if (what === 'join' || what === 'leave') await crew[what](actorOf(company), at(jobs, of), [at(people, to).personId]);
    else if (what === 'log' || entries.length === 0) {
      const body = hour(at(jobs, of), at(people, to).personId, slot);
      await company.owner.post('/v1/time-entries', body).expect(201);
      entries.push(String(body['id']));
    } else if (what === 'void') await company.owner.post(`${entry}/void`, { reason: 'Entered twice' }).expect(200);
    // Refused for what is void: then nothing happened.
    else await company.owner.patch(entry, what === 'move' ? { jobId: at(jobs, to) } : { personId: at(people, to).personId });
  }
});

function contents({ rows }: TestPhone): object[] {
  return [...rows.values()].toSorted((a, b) => JSON.stringify([a.kind, a.value['id']]).localeCompare(JSON.stringify([b.kind, b.value['id']])));
}
