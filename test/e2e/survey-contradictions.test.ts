import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond } from '../support/test-pond.js';

const q = (value: number, unit: string): object => ({ value, unit });
const outline = { shape: 'ellipse', length: q(24, 'ft'), width: q(16, 'ft') };
const probes = { unit: 'in', readings: [[18, 27], [20, 30], [22, 30], [16, 25]].map(([toSediment, toBottom]) => ({ toSediment, toBottom })) };
const profile = (...points: [number, string, number, string][]): object => ({ depthProfile: points.map(([distance, unit, depth, of]) => ({ distance: q(distance, unit), depth: q(depth, of) })) });

describe('a survey that contradicts itself', () => {
  let test: TestApp;
  let company: TestCompany;
  let featureId: string;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    ({ featureId } = await makeTestPond(company));
  });
  afterAll(() => test.close());

  const enter = (body: object) => company.estimator.post('/v1/surveys', { featureId, surveyedOn: '2026-05-04', outline, probes, ...body });
  const warnings = async (body: object): Promise<string[]> => (await company.crew.get(`/v1/surveys/${(await enter(body)).body.id}/takeoff`)).body.warnings;

  it('is warned of when its depth profile is longer than the pond', async () => {
    expect(await warnings(profile([0, 'ft', 0, 'in'], [24, 'ft', 30, 'in']))).toEqual([]);
    expect(await warnings(profile([0, 'm', 0, 'in'], [24, 'm', 30, 'in']))).toEqual([expect.stringContaining('The depth profile is 24 m long, and no straight line in the outline is longer than 7.3 m')]);
    const measured = { outline: { shape: 'measured', area: q(300, 'ft2'), perimeter: q(70, 'ft') } };
    expect(await warnings({ ...measured, ...profile([0, 'm', 0, 'in'], [24, 'm', 30, 'in']) })).toEqual([]);
  });

  it('is warned of when its depth profile goes far below every reading', async () => {
    expect(await warnings(profile([0, 'ft', 45, 'in'], [16, 'ft', 0, 'in']))).toEqual([]);
    expect(await warnings(profile([0, 'ft', 0, 'in'], [8, 'ft', 30, 'ft'], [16, 'ft', 0, 'in']))).toEqual([expect.stringContaining('goes down to 30 ft, and no reading deeper than 2.5 ft')]);
    expect(await warnings({ probes: null, ...profile([0, 'ft', 0, 'in'], [8, 'ft', 30, 'ft']) })).toEqual([]);
  });

  it('may not tell two conditions of one piece of equipment', async () => {
    const { id } = (await company.owner.post('/v1/equipment', { featureId, kind: 'pump', model: 'P 40' })).body;
    const found = (condition: string, named: object): object => ({ condition, works: 'unknown', ...named });
    const twice = await enter({ equipmentCondition: [found('Loud', { equipmentId: id }), found('Leaks', { kind: 'pump' }), found('Silent', { equipmentId: id.toUpperCase() })] });
    expect([twice.status, twice.body.errors]).toEqual([400, [{ pointer: '/equipmentCondition/2/equipmentId', detail: expect.stringContaining('entry 0') as string }]]);
    expect((await enter({ equipmentCondition: [found('Loud', { equipmentId: id }), found('Leaks', { kind: 'pump' }), found('Wet', { kind: 'pump' })] })).status).toBe(201);
  });

  it('has a proposal that warns of hours no quote can plan, without a place in a request', async () => {
    await company.owner.post('/v1/labor-rules', { costCode: 'cleanout', name: 'Clean-out by hand', quantity: 'sedimentVolume', unit: 'yd3', setupHours: '3', hoursPerUnit: '1.75', minimumHours: '6', effectiveFrom: '2026-01-01' });
    const { body } = await enter({ outline: { shape: 'rectangle', length: q(3000, 'ft'), width: q(3000, 'ft') }, probes: { unit: 'ft', readings: [{ toSediment: 10, toBottom: 30 }] } });
    const proposal = await company.estimator.post(`/v1/surveys/${body.id}/proposal`, { scope: ['clean-out'] });
    expect(proposal.body.items[0].warnings[0]).toMatch(/^Clean-out by hand: This line would take 11666670 hours/);
  });
});
