import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond } from '../support/test-pond.js';

const ft = (value: number): object => ({ value, unit: 'ft' });
const outline = { shape: 'rectangle', length: ft(24), width: ft(16) };

describe('a survey whose depths are all 0', () => {
  let test: TestApp;
  let company: TestCompany;
  let featureId: string;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    ({ featureId } = await makeTestPond(company));
  });
  afterAll(() => test.close());

  it.each([
    ['rod readings', { probes: { unit: 'in', readings: [{ toSediment: 0, toBottom: 0 }, { toSediment: 0, toBottom: 0 }] } }],
    ['a depth profile', { depthProfile: [{ distance: ft(0), depth: ft(0) }, { distance: ft(24), depth: ft(0) }] }],
  ])('given as %s has a takeoff and a proposal, without a sheet', async (_, depths) => {
    const made = await company.owner.post('/v1/surveys', { featureId, surveyedOn: '2026-05-04', outline, ...depths });
    expect(made.status).toBe(201);
    const takeoff = await company.crew.get(`/v1/surveys/${made.body.id}/takeoff`);
    expect([takeoff.status, takeoff.body.surfaceArea?.value, takeoff.body.linerSheetArea]).toEqual([200, expect.closeTo(384, 9), null]);
    const proposal = await company.estimator.post(`/v1/surveys/${made.body.id}/proposal`, { scope: ['liner', 'circulation', 'doser', 'plants', 'fish'] });
    expect([proposal.status, proposal.body.items[0].warnings]).toEqual([200, expect.arrayContaining([expect.stringContaining('and a depth')])]);
  });
});
