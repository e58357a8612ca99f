import { createApp } from '../../src/create-app.js';
import type { Provisioned } from '../../src/platform/database/provision.js';
import { acceptSimpleWork } from '../../test/support/accepted-work.js';
import { appClient } from '../../test/support/test-app.js';
import { makeTestCompany } from '../../test/support/test-company.js';
import { post, routesOf, type World } from '../lists/world.js';

const JOBS = 10;
const PEOPLE = 20;
const VISITS = 60;
const WEEK = '2027-W19';
/** The Monday of the week. */
const MONDAY = '2027-05-10';
const WORKDAYS = 5;
const TOGETHER = 3;

/** A week of 60 visits of 20 people to ten jobs; one of the people goes to all ten on the Monday. */
export async function makeScheduleWorld(database: Provisioned): Promise<World> {
  const app = await createApp(database, 'silent');
  await app.listen(0, '127.0.0.1');
  const company = await makeTestCompany(appClient(app, (await app.getUrl()).replace('[::1]', '127.0.0.1')));
  const { owner, crewLead } = company;
  const people: string[] = [];
  for (let i = 0; i < PEOPLE; i++) people.push(await post(owner, '/v1/people', { name: `Crew ${i}`, email: `sent-${i}@fernhollow.example`, role: 'crew', hourlyWage: '24.00', burdenPercent: '22.5' }));
  const jobs: string[] = [];
  for (let i = 0; i < JOBS; i++) {
    const { jobId } = await acceptSimpleWork(company, '900.00');
    await post(owner, '/v1/blockers', { jobId, kind: 'utility-locate', requestedOn: '2027-05-03', clearOn: '2027-05-11' });
    jobs.push(jobId);
  }
  for (let i = 0; i < VISITS; i++) {
    // The first ten are the lead's Monday.
    const day = i < JOBS ? MONDAY : `2027-05-${10 + (i % WORKDAYS)}`;
    const personIds = [...(i < JOBS ? [crewLead.personId] : []), ...Array.from({ length: TOGETHER }, (_, k) => people[(i * TOGETHER + k) % PEOPLE] ?? '')];
    await post(owner, '/v1/visits', { jobId: jobs[i % JOBS], day, startTime: '07:30', lengthMinutes: 45, personIds, bring: ['Mud pump'], note: 'Drain first.' });
  }
  const routes = await routesOf(app, owner, {
    'day sheet of ten jobs': `/v1/day?personId=${crewLead.personId}&date=${MONDAY}`,
    'board of a week with 60 visits of 20 people': `/v1/board?week=${WEEK}`,
    'list of 50 visits': '/v1/visits?limit=50',
  });
  await app.close();
  return { companyId: company.id, token: owner.token, routes };
}
