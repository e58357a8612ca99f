import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { hourLogger, makePullCrews } from './pull-crews.js';
import { TestPhone } from './support.js';

describe('the cursor of a pull', () => {
  let test: TestApp;
  let company: TestCompany;
  let mine: string;
  let others: string;

  const log = hourLogger();

  beforeAll(async () => {
    test = await startTestApp();
  });
  beforeEach(async () => {
    ({ company, mine, others } = await makePullCrews(test));
  });
  afterAll(() => test.close());

  it('starts a phone over that knows an older scope', async () => {
    const phone = new TestPhone(company.crew, test);
    await phone.pull();
    const parts = JSON.parse(Buffer.from(phone.cursor ?? '', 'base64url').toString()) as string[];
    const older = Buffer.from(JSON.stringify(parts.with(3, 'older'))).toString('base64url');
    const answer = await company.crew.get(`/v1/sync/pull?cursor=${older}`).expect(410);
    expect(answer.body.detail).toContain('renewed');
  });

  it('answers an expired or foreign cursor with 410 and how to start over', async () => {
    const phone = new TestPhone(company.crew, test);
    await phone.pull();
    const lead = new TestPhone(company.crewLead, test);
    await lead.pull();
    const stranger = await makeTestCompany(test);
    const theirs = new TestPhone(stranger.crew, test);
    await theirs.pull();
    const parts = JSON.parse(Buffer.from(phone.cursor ?? '', 'base64url').toString()) as string[];
    const changed = (index: number, value: string): string => Buffer.from(JSON.stringify(parts.with(index, value))).toString('base64url');
    for (const cursor of [changed(4, '2020-01-01'), changed(0, '1'), changed(5, '999999999999'), changed(6, '1'), changed(2, 'owner'), changed(3, 'other'), lead.cursor ?? '', theirs.cursor ?? '']) {
      const answer = await company.crew.get(`/v1/sync/pull?cursor=${cursor}`).expect(410);
      expect(answer.body).toMatchObject({ type: 'urn:rillbook:problem:cursor-expired', detail: expect.stringContaining('Start over') });
    }
    for (const cursor of ['abc', changed(1, 'nobody'), '%7B%7D', (phone.cursor ?? '').slice(0, -4), 'a'.repeat(2_001), changed(5, '-1'), changed(6, '18446744073709551616'), changed(4, '2027-02-30')]) await company.crew.get(`/v1/sync/pull?cursor=${cursor}`).expect(400);
    for (const query of ['limit=0', 'limit=501', 'limit=-1', 'limit=1e2', 'limit=ten', 'limit=', 'limit=1&limit=2', `cursor=${phone.cursor}&cursor=${phone.cursor}`, 'unheard=of']) await company.crew.get(`/v1/sync/pull?${query}`).expect(400);
  });

  it('starts over when the role of the person has changed', async () => {
    const phone = new TestPhone(company.crew, test);
    await phone.pull();
    const { body: person } = await company.owner.get(`/v1/people/${company.crew.personId}`).expect(200);
    expect(person.role).toBe('crew');
    await company.owner.patch(`/v1/people/${company.crew.personId}`, { role: 'crew-lead' });
    await new Promise((resolve) => setTimeout(resolve, 3_100));
    await company.crew.get(`/v1/sync/pull?cursor=${phone.cursor}`).expect(410);
  });

  it('gives nothing of a job whose id was put into a cursor by hand', async () => {
    await log(company.crewLead, others, company.crewLead.personId);
    const phone = new TestPhone(company.crew, test);
    await phone.pull();
    const parts = (JSON.parse(Buffer.from(phone.cursor ?? '', 'base64url').toString()) as string[]).slice(0, 7);
    for (const what of ['fill', 'drop', 'all']) {
      const cursor = Buffer.from(JSON.stringify([...parts, what, others, '', null])).toString('base64url');
      const { body } = await company.crew.get(`/v1/sync/pull?cursor=${cursor}`).expect(200);
      expect([what, body.items]).toEqual([what, []]);
    }
  });

  it('gives a person of another company who takes a cursor over with their own name nothing of this one', async () => {
    const phone = new TestPhone(company.crew, test);
    await phone.pull();
    const stranger = await makeTestCompany(test);
    const parts = JSON.parse(Buffer.from(phone.cursor ?? '', 'base64url').toString()) as string[];
    const forged = Buffer.from(JSON.stringify(parts.with(1, stranger.crew.personId))).toString('base64url');
    expect((await stranger.crew.get(`/v1/sync/pull?cursor=${forged}`)).status).toBe(410);
    const fromTheStart = Buffer.from(JSON.stringify(parts.with(1, stranger.crew.personId).with(5, '0').with(6, '0'))).toString('base64url');
    const answer = await stranger.crew.get(`/v1/sync/pull?cursor=${fromTheStart}`).expect(200);
    const theirs = [stranger.owner, stranger.estimator, stranger.crewLead, stranger.crew].map(({ personId }) => personId);
    expect((answer.body.items as { id: string }[]).filter(({ id }) => !theirs.includes(id))).toEqual([]);
  });

  it('gives page by page with the smallest limit what it gives at once with the largest', async () => {
    for (let i = 0; i < 3; i++) await log(company.crew, mine, company.crew.personId);
    const [small, large] = [new TestPhone(company.crew, test), new TestPhone(company.crew, test)];
    await small.pull(1);
    await large.pull(500);
    expect([...small.rows.entries()]).toEqual([...large.rows.entries()]);
    expect(small.pages).toBeGreaterThan(large.pages);
  });
});
