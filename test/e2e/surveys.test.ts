import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond, type TestPond } from '../support/test-pond.js';

const ft = (value: number) => ({ value, unit: 'ft' });
const ellipse = { shape: 'ellipse', length: ft(24), width: ft(16) };
const nothingMore = { depthProfile: null, pipeRun: null, equipmentCondition: [], reclaimedMaterials: [], waterTests: [] };
const probes = { unit: 'in', readings: [{ at: [1, 0.5], toSediment: 18, toBottom: 27 }, { toSediment: 20, toBottom: 30 }] };

describe('surveys', () => {
  let test: TestApp;
  let company: TestCompany;
  let pond: TestPond;
  const survey = () => ({ featureId: pond.featureId, surveyedOn: '2027-04-12', outline: ellipse });

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    pond = await makeTestPond(company);
  });
  afterAll(() => test.close());

  it('takes what a crew lead measured, gives it back as entered, and lets the crew read it', async () => {
    const body = { ...survey(), probes, accessFactor: '1.15', findings: ['Liner torn at the waterfall', 'Wurzeln im Skimmer'] };
    const made = await company.crewLead.post('/v1/surveys', body);
    expect(made.status).toBe(201);
    expect(made.headers['etag']).toBe('"1"');
    expect(made.body).toEqual({ id: made.body.id, ...body, ...nothingMore, createdAt: made.body.createdAt });
    expect((await company.crew.get(`/v1/surveys/${made.body.id}`)).body).toEqual(made.body);
  });

  it('needs no readings, no findings and no access factor', async () => {
    const made = await company.owner.post('/v1/surveys', { ...survey(), probes: null });
    expect(made.status).toBe(201);
    expect(made.body).toMatchObject({ probes: null, findings: [], accessFactor: '1', ...nothingMore });
  });

  it.each([
    ['rectangle', { shape: 'rectangle', length: { value: 96, unit: 'in' }, width: ft(0.1) }],
    ['polygon', { shape: 'polygon', unit: 'm', points: [[0, 0], [6.25, 0.1], [6, 4], [0, 0]] }],
    ['two-stake', { shape: 'two-stake', unit: 'ft', baseline: 30, ranges: [[20, 20], [25, 20], [20, 25]] }],
    ['measured', { shape: 'measured', area: { value: 300, unit: 'ft2' }, perimeter: ft(64) }],
  ])('takes a %s outline to the last digit', async (_shape, outline) => {
    const made = await company.estimator.post('/v1/surveys', { ...survey(), outline });
    expect(made.status).toBe(201);
    expect(made.body.outline).toEqual(outline);
  });

  it('answers a repeated create with the first result, and another body with 409', async () => {
    const body = { id: uuidv7(), ...survey(), probes };
    const answers = [await company.crewLead.post('/v1/surveys', body), await company.crewLead.post('/v1/surveys', body)];
    const other = await company.crewLead.post('/v1/surveys', { ...body, probes: { ...probes, unit: 'cm' } });
    expect(answers.map((answer) => answer.status)).toEqual([201, 200]);
    expect(answers[1]?.body).toEqual(answers[0]?.body);
    expect([other.status, other.body.code]).toEqual([409, 'id-taken']);
  });

  it('merges a patch into the outline, and checks the result as a whole', async () => {
    const { body } = await company.owner.post('/v1/surveys', { ...survey(), probes });
    const path = `/v1/surveys/${body.id}`;
    const longer = await company.owner.patch(path, { outline: { length: { value: 25 } }, accessFactor: '1.3' }, '"1"');
    expect([longer.status, longer.headers['etag']]).toEqual([200, '"2"']);
    expect(longer.body).toMatchObject({ outline: { ...ellipse, length: ft(25) }, probes, accessFactor: '1.3' });
    const mixed = await company.owner.patch(path, { outline: { shape: 'polygon', unit: 'ft', points: [[0, 0], [9, 0], [0, 9]] } }, '"2"');
    expect(mixed.status).toBe(400);
    expect(mixed.body.errors.map((error: { pointer: string }) => error.pointer).sort()).toEqual(['/outline/length', '/outline/width']);
    const square = await company.owner.patch(path, { outline: { shape: 'polygon', unit: 'ft', points: [[0, 0], [9, 0], [0, 9]], length: null, width: null }, probes: null }, '"2"');
    expect(square.body).toMatchObject({ outline: { shape: 'polygon', unit: 'ft', points: [[0, 0], [9, 0], [0, 9]] }, probes: null });
    const swapped = await company.owner.patch(path, { probes: { unit: 'in', readings: [{ toSediment: 9, toBottom: 3 }] } }, '"3"');
    expect([swapped.status, swapped.body.errors[0].pointer]).toEqual([400, '/probes/readings/0/toBottom']);
    expect((await company.owner.patch(path, { findings: [] }, '"2"')).status).toBe(412);
  });

  it('lists the surveys of one feature without points, readings and findings', async () => {
    const { featureId } = await makeTestPond(company);
    const plain = await company.owner.post('/v1/surveys', { ...survey(), featureId, accessFactor: '1.1500' });
    const full = await company.owner.post('/v1/surveys', { ...survey(), featureId, probes, findings: ['Leak'] });
    const list = await company.crew.get(`/v1/surveys?featureId=${featureId}`);
    const summary = (body: { id: string; createdAt: string }) => ({ id: body.id, featureId, surveyedOn: '2027-04-12', outlineShape: 'ellipse', createdAt: body.createdAt });
    expect(list.body).toEqual({
      items: [
        { ...summary(full.body), accessFactor: '1', readingCount: 2, findingCount: 1 },
        { ...summary(plain.body), accessFactor: '1.15', readingCount: 0, findingCount: 0 },
      ],
      nextCursor: null,
    });
    const first = await company.crew.get(`/v1/surveys?featureId=${featureId}&limit=1`);
    expect(first.body).toMatchObject({ items: [{ id: full.body.id }], nextCursor: full.body.id });
    const second = await company.crew.get(`/v1/surveys?featureId=${featureId}&limit=1&cursor=${full.body.id}`);
    expect(second.body).toMatchObject({ items: [{ id: plain.body.id }], nextCursor: null });
  });

  it('refuses a feature that is not there, and hides the surveys of another company', async () => {
    const other = await makeTestCompany(test);
    const stranger = await makeTestPond(other);
    for (const featureId of [uuidv7(), stranger.featureId]) {
      const answer = await company.owner.post('/v1/surveys', { ...survey(), featureId });
      expect([answer.status, answer.body.code, answer.body.errors[0].pointer]).toEqual([422, 'no-such-reference', '/featureId']);
    }
    const { body } = await other.owner.post('/v1/surveys', { ...survey(), featureId: stranger.featureId });
    for (const path of [`/v1/surveys/${body.id}`, `/v1/surveys/${body.id}/takeoff`]) expect((await company.owner.get(path)).status).toBe(404);
    expect((await company.owner.get(`/v1/surveys?featureId=${stranger.featureId}`)).body.items).toEqual([]);
  });

  it('lets the crew write nothing, and a crew lead change nothing', async () => {
    const { body } = await company.owner.post('/v1/surveys', survey());
    expect((await company.crew.post('/v1/surveys', survey())).status).toBe(403);
    expect((await company.crewLead.patch(`/v1/surveys/${body.id}`, { findings: [] }, '"1"')).status).toBe(403);
  });
});
