import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond } from '../support/test-pond.js';
import { make } from '../support/test-quote.js';

const q = (value: number, unit: string): object => ({ value, unit });
const ELLIPSE = { shape: 'ellipse', length: q(24, 'ft'), width: q(16, 'ft') };
/** The longest chord is the diagonal of 30 × 40 ft: 50 ft. */
const POLYGON = { shape: 'polygon', unit: 'ft', points: [[0, 0], [40, 0], [40, 30], [0, 30]] };
const MEASURED = { shape: 'measured', area: q(300, 'ft2'), perimeter: q(64, 'ft') };

describe('suction and discharge in a proposal', () => {
  let test: TestApp;
  let company: TestCompany;
  let featureId: string;
  const warningsFor = async (outline: object, places: object): Promise<string> => {
    const pipeRun = { pipes: [{ side: 'discharge', length: q(60, 'ft'), innerDiameter: q(2.067, 'in') }], staticLift: q(8, 'ft'), ...places };
    const survey = await make(company.owner, '/v1/surveys', { featureId, surveyedOn: '2026-05-04', outline, pipeRun });
    const { status, body } = await company.estimator.post(`/v1/surveys/${survey}/proposal`, { scope: ['circulation'] });
    expect(status).toBe(200);
    return (body as { items: { warnings: string[] }[] }).items.flatMap(({ warnings }) => warnings).join('\n');
  };

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    ({ featureId } = await makeTestPond(company));
  });
  afterAll(() => test.close());

  it.each([
    ['side by side in an ellipse', ELLIPSE, { suctionAt: [2, 8], dischargeAt: [12, 8] }, 'stand 42 % of the longest chord'],
    ['on one short side of a polygon, in its unit', POLYGON, { suctionAt: [0, 0], dischargeAt: [0, 24] }, 'stand 48 % of the longest chord'],
    ['farther apart than the pond is long', ELLIPSE, { suctionAt: [0, 8], dischargeAt: [24, 80] }, 'farther apart than the longest straight line'],
    ['in an outline without a shape', MEASURED, { suctionAt: [0, 8], dischargeAt: [24, 8] }, 'was not checked'],
    ['nowhere', ELLIPSE, {}, 'was not checked'],
  ])('are warned about when they stand %s', async (_where, outline, places, warning) => {
    expect(await warningsFor(outline, places)).toContain(warning);
  });

  it.each([
    ['of an ellipse', ELLIPSE, { suctionAt: [1, 8], dischargeAt: [13.1, 8] }],
    ['of a polygon', POLYGON, { suctionAt: [0, 0], dischargeAt: [0, 25] }],
  ])('give no warning when they stand at least half the longest chord %s apart', async (_where, outline, places) => {
    expect(await warningsFor(outline, places)).not.toMatch(/Short-circuiting|was not checked|farther apart/);
  });
});
