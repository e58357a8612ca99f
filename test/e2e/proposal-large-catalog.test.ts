import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond } from '../support/test-pond.js';

const HEADER = 'sku,name,unit,unitCost,markupPercent,kind,innerDiameter,fittingKind,pieceLength';
const fittings = (count: number): string[] => Array.from({ length: count }, (_, i) => `FIT-${String(i).padStart(4, '0')},Elbow,each,2.10,30,fitting,3 in,elbow-90,`);

describe('a proposal from a catalog of thousands of parts', () => {
  let test: TestApp;
  let company: TestCompany;
  let surveyId: string;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    const { featureId } = await makeTestPond(company);
    const pipes = [{ side: 'discharge', length: { value: 60, unit: 'ft' }, innerDiameter: { value: 2.067, unit: 'in' } }];
    const outline = { shape: 'rectangle', length: { value: 24, unit: 'ft' }, width: { value: 16, unit: 'ft' } };
    surveyId = (await company.owner.post('/v1/surveys', { featureId, surveyedOn: '2026-05-04', outline, pipeRun: { pipes, staticLift: { value: 8, unit: 'ft' } } })).body.id;
  }, 60_000);
  afterAll(() => test.close());

  const take = async (rows: string[]): Promise<void> => {
    const answer = await fetch(`${test.url}/v1/parts/import`, { method: 'POST', headers: { authorization: `Bearer ${company.owner.token}`, 'content-type': 'text/csv' }, body: [HEADER, ...rows].join('\n') });
    expect([answer.status, ((await answer.json()) as { made: number }).made]).toEqual([200, rows.length]);
  };
  const circulation = async (): Promise<{ parts: { kind: string; suggested: { name: string } | null }[]; warnings: string[] }> => (await company.estimator.post(`/v1/surveys/${surveyId}/proposal`, { scope: ['circulation'] })).body.items[0];

  it('finds the pipe behind more fittings than are looked at, and says that not all of them were', async () => {
    await take(['PIPE-2,Pipe of 2 in,ft,1.90,30,pipe,2.067 in,,', ...fittings(999)]);
    expect((await circulation()).warnings).not.toContainEqual(expect.stringContaining('or more parts'));
    await take(Array.from({ length: 1200 }, (_, i) => `A-${i},Elbow,each,2.10,30,fitting,3 in,elbow-90,`));
    const { parts, warnings } = await circulation();
    expect(parts.find(({ kind }) => kind === 'pipe')?.suggested?.name).toBe('Pipe of 2 in');
    expect(warnings).toContain('The catalog has 1000 or more parts of the kind fitting: only the first 1000 by stock number were looked at.');
  });
});
