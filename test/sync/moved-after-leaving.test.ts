import { JobCrew } from '../../src/features/jobs/index.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';
import { hour, TestPhone } from './support.js';

describe('hours that are moved to another job', () => {
  let test: TestApp;
  let company: TestCompany;
  let left: string;
  let other: string;
  let slot = 0;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    left = await makeTestJob(test, company);
    other = await makeTestJob(test, company);
  });
  afterAll(() => test.close());

  const crew = (): JobCrew => test.app.get(JobCrew, { strict: false });
  const log = async (): Promise<string> => (await company.owner.post('/v1/time-entries', hour(left, company.crew.personId, slot++)).expect(201)).body.id as string;
  const move = async (id: string): Promise<void> => {
    await company.owner.patch(`/v1/time-entries/${id}`, { jobId: other }).then((answer) => expect(answer.status).toBe(200));
  };

  it('leave the phone of somebody who came off their first job just before', async () => {
    await crew().join(actorOf(company), left, [company.crewLead.personId]);
    const id = await log();
    const phone = new TestPhone(company.crewLead, test);
    await phone.pull();
    expect(phone.ids('time-entry')).toEqual([id]);
    await crew().leave(actorOf(company), left, [company.crewLead.personId]);
    await move(id);
    await phone.pull();
    expect(phone.ids('time-entry')).toEqual([]);
  });

  it('tell nothing to somebody who never was on either job, or is off the job on which they stay', async () => {
    await crew().join(actorOf(company), left, [company.crewLead.personId]);
    await crew().leave(actorOf(company), left, [company.crewLead.personId]);
    const phones = [new TestPhone(company.crewLead, test), new TestPhone(company.crew, test)];
    for (const phone of phones) await phone.pull();
    const id = (await company.owner.post('/v1/time-entries', hour(left, company.owner.personId, slot++)).expect(201)).body.id as string;
    await company.owner.patch(`/v1/time-entries/${id}`, { note: 'The pump ran dry' });
    for (const phone of phones) await phone.pull();
    expect(phones.map(({ received }) => received.some((item) => item.id === id))).toEqual([false, false]);
  });
});
