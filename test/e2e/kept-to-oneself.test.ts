import { DataSource } from 'typeorm';
import { loggedError } from '../../src/platform/http/logged-error.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';

describe('what belongs to one person', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  const cached = async (answer: PromiseLike<{ headers: Record<string, string> }>): Promise<string | undefined> => (await answer).headers['cache-control'];

  it('is kept by no cache unasked, and tokens and codes not at all', async () => {
    const { owner, crew } = company;
    for (const path of ['/v1/jobs', `/v1/people/${crew.personId}`, '/v1/sync/pull', '/v1/time-entries', '/v1/jobs/none']) expect([path, await cached(owner.get(path))]).toEqual([path, 'private, no-cache']);
    const secrets = [
      owner.post('/v1/device-enrolments', { personId: crew.personId }),
      owner.post('/v1/calendar-feeds', { name: 'Desk' }),
      test.request('post', '/v1/sessions').send({ email: 'nobody@fernhollow.example', password: 'no such person' }),
    ];
    for (const answer of secrets) expect(await cached(answer)).toBe('no-store');
  });

  it('stays out of the log when a statement fails', async () => {
    const failed = await test.app.get(DataSource).query('SELECT $1::text, $2::int', ['a secret', 'five hours']).catch((error: unknown) => error);
    expect(JSON.stringify(failed)).toContain('a secret');
    const line = loggedError(failed);
    expect(JSON.stringify(line)).not.toContain('a secret');
    expect(line).toMatchObject({ type: 'QueryFailedError', code: '22P02', query: 'SELECT $1::text, $2::int' });
    expect(line.stack).toMatch(/\n {4}at /);
  });
});
