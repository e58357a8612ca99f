import { JobCrew } from '../../src/features/jobs/index.js';
import type { TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';
import { hour } from './support.js';

/** A company with a job of crew and lead, and one of the lead alone. */
export async function makePullCrews(test: TestApp): Promise<{ company: TestCompany; mine: string; others: string }> {
  const company = await makeTestCompany(test);
  const mine = await makeTestJob(test, company, { title: 'Mine' });
  const others = await makeTestJob(test, company, { title: 'Of others' });
  const crew = test.app.get(JobCrew, { strict: false });
  await crew.join(actorOf(company), mine, [company.crew.personId, company.crewLead.personId]);
  await crew.join(actorOf(company), others, [company.crewLead.personId]);
  return { company, mine, others };
}

/** Logs hours that never overlap, and gives their ids. */
export function hourLogger(): (client: Client, jobId: string, personId: string) => Promise<string> {
  let slot = 0;
  return async (client, jobId, personId) => {
    const body = hour(jobId, personId, slot++);
    await client.post('/v1/time-entries', body).expect(201);
    return String(body['id']);
  };
}
