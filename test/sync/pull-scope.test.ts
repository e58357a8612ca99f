import { CustomersService } from '../../src/features/customers/index.js';
import { JobCrew } from '../../src/features/jobs/index.js';
import { SitesService } from '../../src/features/sites/index.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';
import { hourLogger, makePullCrews } from './pull-crews.js';
import { TestPhone } from './support.js';

describe('what a phone pulls', () => {
  let test: TestApp;
  let company: TestCompany;
  let mine: string;
  let others: string;

  const crew = (): JobCrew => test.app.get(JobCrew, { strict: false });
  const log = hourLogger();
  const emptyHanded = (phone: TestPhone): void => void phone.received.splice(0);

  beforeAll(async () => {
    test = await startTestApp();
  });
  beforeEach(async () => {
    ({ company, mine, others } = await makePullCrews(test));
  });
  afterAll(() => test.close());

  it('gives crew their jobs and their own hours there, a lead everybody\'s, the office all jobs', async () => {
    const own = await log(company.crew, mine, company.crew.personId);
    const leads = await log(company.crewLead, mine, company.crewLead.personId);
    const elsewhere = await log(company.crewLead, others, company.crewLead.personId);
    const lone = await makeTestJob(test, company, { title: 'Nobody is on it' });
    const [crewPhone, leadPhone, office] = [company.crew, company.crewLead, company.owner].map((client) => new TestPhone(client, test)) as [TestPhone, TestPhone, TestPhone];
    for (const phone of [crewPhone, leadPhone, office]) await phone.pull(2);
    expect([crewPhone.ids('job'), crewPhone.ids('time-entry')]).toEqual([[mine], [own]]);
    expect([leadPhone.ids('job'), leadPhone.ids('time-entry')]).toEqual([[mine, others].sort(), [own, leads, elsewhere].sort()]);
    expect([office.ids('job'), office.ids('time-entry')]).toEqual([[mine, others, lone].sort(), [own, leads, elsewhere].sort()]);
    for (const phone of [crewPhone, leadPhone, office]) expect(phone.ids('person')).toHaveLength(4);
  });

  it('gives nobody a price, a cost or a wage', async () => {
    await log(company.crew, mine, company.crew.personId);
    for (const client of [company.crew, company.crewLead, company.owner]) {
      const phone = new TestPhone(client, test);
      await phone.pull();
      const names = phone.received.flatMap(({ value }) => Object.keys(value ?? {}));
      expect(names.filter((name) => /wage|burden|contract|laborCost|email/i.test(name))).toEqual([]);
      expect(names).toEqual(expect.arrayContaining(['plannedHours', 'paidMinutes', 'role']));
    }
  });

  it('says nothing at all of what was never in sight', async () => {
    const phone = new TestPhone(company.crew, test);
    await phone.pull();
    emptyHanded(phone);
    const id = await log(company.crewLead, others, company.crewLead.personId);
    await company.crewLead.patch(`/v1/time-entries/${id}`, { note: 'Seen by nobody else' });
    await log(company.crewLead, mine, company.crewLead.personId);
    await phone.pull();
    expect(phone.received.filter(({ kind }) => kind !== 'job')).toEqual([]);
    expect(phone.ids('job')).toEqual([mine]);
  });

  it('brings a job with all its rows to who comes on it, and takes them from who leaves', async () => {
    const phone = new TestPhone(company.crewLead, test);
    const lone = await makeTestJob(test, company, { title: 'Nobody is on it' });
    const there = [];
    for (let i = 0; i < 5; i++) there.push(await log(company.owner, lone, company.crew.personId));
    const here = await log(company.crew, mine, company.crew.personId);
    await phone.pull(3);
    expect(phone.ids('time-entry')).toEqual([here]);
    await crew().join(actorOf(company), lone, [company.crewLead.personId]);
    await phone.pull(3);
    expect([phone.ids('job'), phone.ids('time-entry')]).toEqual([[mine, others, lone].sort(), [here, ...there].sort()]);
    await crew().leave(actorOf(company), lone, [company.crewLead.personId]);
    await phone.pull(3);
    expect([phone.ids('job'), phone.ids('time-entry')]).toEqual([[mine, others].sort(), [here]]);
    await crew().join(actorOf(company), lone, [company.crewLead.personId]);
    await crew().leave(actorOf(company), mine, [company.crewLead.personId]);
    await phone.pull(2);
    expect([phone.ids('job'), phone.ids('time-entry')]).toEqual([[others, lone].sort(), there.sort()]);
  });

  it.each(['crew', 'crewLead', 'estimator'] as const)('lets %s keep their own hours whatever the job, through coming on it and leaving it', async (who) => {
    const [phone, me] = [new TestPhone(company[who], test), company[who].personId];
    const lone = await makeTestJob(test, company, { title: 'Nobody is on it' });
    const own = [];
    for (let i = 0; i < 4; i++) own.push(await log(company.owner, lone, me));
    await phone.pull(3);
    own.push(await log(company.owner, lone, me));
    for (const step of ['join', 'leave'] as const) {
      await phone.pull(3);
      expect(own.filter((id) => !phone.rows.has(`time-entry ${id}`))).toEqual([]);
      await crew()[step](actorOf(company), lone, [me]);
    }
    await phone.pull(3);
    expect((await company.owner.patch(`/v1/time-entries/${own[0]}`, { note: 'Told also off the job' })).status).toBe(200);
    await phone.pull();
    expect(own.filter((id) => !phone.rows.has(`time-entry ${id}`))).toEqual([]);
    expect(phone.rows.get(`time-entry ${own[0]}`)?.value['note']).toBe('Told also off the job');
    expect(phone.received.filter(({ change, kind }) => change === 'removal' && kind === 'time-entry')).toEqual([]);
  });

  it('takes from who leaves a job the hours of others there, and gives each row once to who comes on it', async () => {
    const phone = new TestPhone(company.crewLead, test);
    const own = await log(company.crewLead, mine, company.crewLead.personId);
    const crews = await log(company.crew, mine, company.crew.personId);
    await phone.pull();
    expect(phone.received.filter(({ kind }) => kind === 'time-entry')).toHaveLength(2);
    await crew().leave(actorOf(company), mine, [company.crewLead.personId]);
    await phone.pull();
    expect(phone.ids('time-entry')).toEqual([own]);
    emptyHanded(phone);
    await crew().join(actorOf(company), mine, [company.crewLead.personId]);
    await phone.pull();
    expect(phone.received.filter(({ kind }) => kind === 'time-entry').map(({ id }) => id)).toEqual([crews]);
  });

  it('takes hours of a job that is none of theirs away when they turn out to be somebody else\'s', async () => {
    const phone = new TestPhone(company.crew, test);
    const id = await log(company.owner, others, company.crew.personId);
    await phone.pull();
    expect(phone.ids('time-entry')).toEqual([id]);
    expect((await company.owner.patch(`/v1/time-entries/${id}`, { personId: company.crewLead.personId })).status).toBe(200);
    await phone.pull();
    expect(phone.ids('time-entry')).toEqual([]);
    expect((await company.owner.patch(`/v1/time-entries/${id}`, { personId: company.crew.personId })).status).toBe(200);
    expect((await company.owner.patch(`/v1/time-entries/${id}`, { personId: company.crewLead.personId })).status).toBe(200);
    await phone.pull();
    expect([phone.ids('time-entry'), phone.received.filter(({ id: of }) => of === id).map(({ change }) => change)]).toEqual([[], ['upsert', 'removal', 'removal']]);
  });

  it('keeps a site while another of the person\'s jobs is there', async () => {
    const actor = actorOf(company);
    const { row: customer } = await test.app.get(CustomersService, { strict: false }).create(actor, { name: 'Marta Ellingsworth' });
    const { row: site } = await test.app.get(SitesService, { strict: false }).create(actor, { customerId: customer.id, address: '4 Osier Court' });
    await test.sql('UPDATE job SET site_id = $1 WHERE id = ANY ($2)', [site.id, [mine, others]]);
    const phone = new TestPhone(company.crewLead, test);
    await phone.pull();
    expect(phone.ids('site')).toEqual([site.id]);
    await crew().leave(actor, mine, [company.crewLead.personId]);
    await phone.pull();
    expect([phone.ids('job'), phone.ids('site')]).toEqual([[others], [site.id]]);
    await crew().leave(actor, others, [company.crewLead.personId]);
    await phone.pull();
    expect([phone.ids('job'), phone.ids('site')]).toEqual([[], []]);
  });

  it('takes a row away whose person or job becomes another', async () => {
    const phone = new TestPhone(company.crew, test);
    const [first, second] = [await log(company.crew, mine, company.crew.personId), await log(company.crew, mine, company.crew.personId)];
    await phone.pull();
    await company.crewLead.patch(`/v1/time-entries/${first}`, { personId: company.crewLead.personId });
    await company.crewLead.patch(`/v1/time-entries/${second}`, { jobId: others });
    await phone.pull();
    expect(phone.ids('time-entry')).toEqual([second]);
    const leads = new TestPhone(company.crewLead, test);
    await crew().leave(actorOf(company), others, [company.crewLead.personId]);
    await leads.pull();
    expect(leads.ids('time-entry')).toEqual([first]);
    expect((await company.owner.patch(`/v1/time-entries/${second}`, { jobId: mine })).status).toBe(200);
    await leads.pull();
    expect(leads.ids('time-entry')).toEqual([first, second].sort());
    expect((await company.owner.patch(`/v1/time-entries/${second}`, { jobId: others })).status).toBe(200);
    await leads.pull();
    expect(leads.ids('time-entry')).toEqual([first]);
  });

  it('takes a row away that left in two steps: another job first, another person then', async () => {
    const phone = new TestPhone(company.crew, test);
    const id = await log(company.crew, mine, company.crew.personId);
    await phone.pull();
    await company.crewLead.patch(`/v1/time-entries/${id}`, { jobId: others });
    await company.crewLead.patch(`/v1/time-entries/${id}`, { personId: company.crewLead.personId });
    await phone.pull(1);
    expect(phone.ids('time-entry')).toEqual([]);
  });

  it('takes a row away that moved to another job before the person left the first', async () => {
    const phone = new TestPhone(company.crewLead, test);
    const lone = await makeTestJob(test, company, { title: 'Nobody is on it' });
    const id = await log(company.crew, mine, company.crew.personId);
    await phone.pull();
    expect((await company.owner.patch(`/v1/time-entries/${id}`, { jobId: lone })).status).toBe(200);
    await crew().leave(actorOf(company), mine, [company.crewLead.personId]);
    await phone.pull();
    expect([phone.ids('job'), phone.ids('time-entry')]).toEqual([[others], []]);
  });

  it('shows nothing of another company', async () => {
    const stranger = await makeTestCompany(test);
    const theirs = new TestPhone(stranger.owner, test);
    await theirs.pull();
    await log(company.crew, mine, company.crew.personId);
    await theirs.pull();
    expect(theirs.ids('job')).toEqual([]);
    expect(theirs.ids('person')).toHaveLength(4);
  });
});
