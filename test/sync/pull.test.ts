import { v7 as uuidv7 } from 'uuid';
import { statementsDuring } from '../support/count-statements.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import type { TestCompany } from '../support/test-company.js';
import { hourLogger, makePullCrews } from './pull-crews.js';
import { hour, TestPhone } from './support.js';

describe('pull', () => {
  let test: TestApp;
  let company: TestCompany;
  let mine: string;
  let slot = 0;

  const log = hourLogger();
  const emptyHanded = (phone: TestPhone): void => void phone.received.splice(0);

  beforeAll(async () => {
    test = await startTestApp();
  });
  beforeEach(async () => {
    ({ company, mine } = await makePullCrews(test));
  });
  afterAll(() => test.close());

  it('tells what changed since, with its revision, and then nothing', async () => {
    const phone = new TestPhone(company.crew, test);
    await phone.pull();
    emptyHanded(phone);
    const id = await log(company.crew, mine, company.crew.personId);
    await phone.pull();
    expect(phone.received.map(({ kind, id: of }) => [kind, of])).toEqual(expect.arrayContaining([['time-entry', id], ['job', mine]]));
    await company.crew.patch(`/v1/time-entries/${id}`, { note: 'Softer than probed' });
    await phone.pull();
    expect(phone.rows.get(`time-entry ${id}`)).toMatchObject({ revision: 2, value: { note: 'Softer than probed' } });
    emptyHanded(phone);
    await phone.pull();
    await phone.pull();
    expect(phone.received).toEqual([]);
  });

  it('tells a revision that changed no value, so that the next change of the phone is not a conflict', async () => {
    const phone = new TestPhone(company.crewLead, test);
    const id = uuidv7();
    const done = { id, state: 'done' };
    await phone.push([phone.mutation('punch-item.add', { id, jobId: mine, description: 'Reset the edge stone' })]);
    await phone.push([phone.mutation('punch-item.change', done, { baseRevision: 1 })]);
    await phone.pull();
    await company.owner.patch(`/v1/punch-items/${id}`, { state: 'done' });
    await phone.pull();
    const revision = phone.rows.get(`punch-item ${id}`)?.revision;
    expect(revision).toBe((await company.owner.get(`/v1/punch-items/${id}`)).headers['etag']?.match(/\d+/)?.map(Number)[0]);
    expect(await phone.push([phone.mutation('punch-item.change', { id, state: 'open' }, { baseRevision: revision })])).toMatchObject([{ outcome: 'applied' }]);
  });

  it('never skips a transaction that commits after a later one', async () => {
    const phone = new TestPhone(company.crew, test);
    await phone.pull();
    const slow = hour(mine, company.crew.personId, slot++);
    const insert = `INSERT INTO time_entry (company_id, id, job_id, person_id, cost_code, started_at, ended_at, recorded_by, hourly_wage, burden_percent) VALUES ($1, $2, $3, $4, 'cleanout', $5, $6, $4, 1, 1)`;
    const values = [company.id, slow['id'], mine, company.crew.personId, slow['startedAt'], slow['endedAt']];
    await test.inTransaction(async (query) => {
      await query(insert, values);
      const fast = await log(company.crew, mine, company.crew.personId);
      await phone.pullAtOnce();
      expect(phone.ids('time-entry')).toEqual([]);
      expect(fast).not.toBe(slow['id']);
    });
    await phone.pull();
    expect(phone.ids('time-entry')).toHaveLength(2);
    expect(phone.ids('time-entry')).toContain(slow['id']);
  });

  it('comes in pages that may end inside one transaction', async () => {
    const phone = new TestPhone(company.crew, test);
    await phone.pull();
    const ids = Array.from({ length: 25 }, () => uuidv7());
    await test.sql(
      `INSERT INTO time_entry (company_id, id, job_id, person_id, cost_code, started_at, ended_at, recorded_by, hourly_wage, burden_percent)
       SELECT $1, id, $3, $4, 'cleanout', timestamptz '2026-01-01' + n * interval '1 hour', timestamptz '2026-01-01' + (n + 1) * interval '1 hour', $4, 1, 1 FROM unnest($2::uuid[]) WITH ORDINALITY AS r(id, n)`,
      [company.id, ids, mine, company.crew.personId],
    );
    const before = phone.pages;
    await phone.pull(4);
    expect(phone.pages - before).toBeGreaterThanOrEqual(7);
    expect(phone.ids('time-entry')).toEqual(ids.toSorted());
    expect(phone.received.filter(({ kind }) => kind === 'time-entry')).toHaveLength(25);
  });

  it('begins each page where the last one that arrived ended, so that one that was cut off is only repeated', async () => {
    for (let i = 0; i < 6; i++) await log(company.crew, mine, company.crew.personId);
    const [whole, broken] = [new TestPhone(company.crew, test), new TestPhone(company.crew, test)];
    await whole.pull();
    const lost = await company.crew.get('/v1/sync/pull?limit=5').expect(200);
    expect(lost.body.more).toBe(true);
    await broken.pull(5);
    expect([...broken.rows.keys()].sort()).toEqual([...whole.rows.keys()].sort());
  });

  it('asks the database one question when nothing changed, and as many for many changes as for few', async () => {
    const phone = new TestPhone(company.crew, test);
    await phone.pull();
    const count = async (): Promise<number> => (await statementsDuring(test, () => phone.pull())).length;
    expect(await count()).toBe(1);
    for (let i = 0; i < 3; i++) await log(company.crew, mine, company.crew.personId);
    const few = await count();
    for (let i = 0; i < 30; i++) await log(company.crew, mine, company.crew.personId);
    expect([few <= 6, (await count()) <= few]).toEqual([true, true]);
  });
});
