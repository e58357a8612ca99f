import { v7 as uuidv7 } from 'uuid';
import { acceptSimpleWork, acceptWorkedExample } from '../support/accepted-work.js';
import { statementsDuring } from '../support/count-statements.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';

const AT = '2027-05-03T14:30:00.000Z';

describe('field totals of a job', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;
  let featureId: string;
  let parts: { id: string; sku: string }[];

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    jobId = (await acceptWorkedExample(company)).jobId;
    featureId = (await company.crew.get(`/v1/jobs/${jobId}`)).body.featureId as string;
    parts = (await company.owner.get('/v1/parts')).body.items as typeof parts;
  });
  afterAll(() => test.close());

  const partId = (sku: string) => parts.find((part) => part.sku === sku)?.id;
  const totals = async (job = jobId) => (await company.crew.get(`/v1/jobs/${job}/field-totals`).expect(200)).body;
  const take = async (family: string, body: object) => (await company.crewLead.post(`/v1/${family}`, { jobId, ...body }).expect(201)).body as { id: string };

  it('are none before anything was taken down, beside what was surveyed and quoted', async () => {
    const { surveyedSediment, ...body } = await totals();
    expect(body).toMatchObject({ jobId, surveyId: expect.any(String), loads: [], depths: [], warnings: [] });
    expect([surveyedSediment.unit, surveyedSediment.value]).toEqual(['yd3', expect.closeTo(8.3776, 4)]);
    expect(body.materials.map(({ partId: id, used, quoted, unit }: Record<string, unknown>) => [id, used, quoted, unit])).toEqual([[partId('SKIM-1'), '0', '1', 'each'], [partId('UL-8'), '0', '640', 'ft2'], [partId('PUMP-26'), '0', '2', 'each']]);
  });

  it('sum the loads of a material over their units, and say how many have no figure', async () => {
    await take('loads', { hauledAt: AT, material: 'sediment', loads: 2, volume: { value: 10, unit: 'yd3' }, weight: { value: 9, unit: 'ton' } });
    await take('loads', { hauledAt: AT, material: 'sediment', volume: { value: 27, unit: 'ft3' } });
    await take('loads', { hauledAt: AT, material: 'sediment', loads: 3 });
    await take('loads', { hauledAt: AT, material: 'stone', weight: { value: 2000, unit: 'lb' } });
    const gone = await take('loads', { hauledAt: AT, material: 'plants', volume: { value: 500, unit: 'yd3' } });
    await company.crewLead.post(`/v1/loads/${gone.id}/void`, { reason: 'Other job' }).expect(200);
    expect((await totals()).loads).toEqual([
      { material: 'sediment', loads: 6, volume: { value: expect.closeTo(11, 9), unit: 'yd3' }, loadsWithoutVolume: 3, weight: { value: 9, unit: 'ton' }, loadsWithoutWeight: 4 },
      { material: 'stone', loads: 1, volume: null, loadsWithoutVolume: 1, weight: { value: expect.closeTo(1, 9), unit: 'ton' }, loadsWithoutWeight: 0 },
    ]);
  });

  it('hold the depths found against those of the survey, at its feature alone', async () => {
    await take('depths', { foundAt: AT, place: 'Inlet', toSediment: { value: 20, unit: 'in' }, toBottom: { value: 34, unit: 'in' } });
    await take('depths', { foundAt: AT, place: 'North bank', toSediment: { value: 2, unit: 'ft' }, toBottom: { value: 3, unit: 'ft' } });
    await take('depths', { foundAt: AT, place: 'Outlet', toBottom: { value: 50.8, unit: 'cm' } });
    const { siteId } = (await company.owner.get(`/v1/features/${featureId}`)).body;
    const stream = (await company.owner.post('/v1/features', { siteId, kind: 'stream', name: 'Inlet stream' })).body.id as string;
    await take('depths', { foundAt: AT, featureId: stream, place: 'Bend', toBottom: { value: 6, unit: 'in' } });
    const inches = (value: number) => ({ value: expect.closeTo(value, 9), unit: 'in' });
    const depths = (await totals()).depths as { featureId: string }[];
    expect(depths.find((one) => one.featureId === featureId)).toEqual({
      featureId,
      found: { readings: 3, meanDepth: inches(30), maxDepth: inches(36), sedimentMeanThickness: inches(26 / 3) },
      surveyed: { readings: 4, meanDepth: inches(28), maxDepth: inches(30), sedimentMeanThickness: inches(9) },
    });
    expect(depths.find((one) => one.featureId === stream)).toMatchObject({ found: { readings: 1, meanDepth: inches(6), sedimentMeanThickness: inches(0) }, surveyed: null });
  });

  it('hold what was used against what was quoted, part by part, and tell no price', async () => {
    await take('material-uses', { usedAt: AT, partId: partId('UL-8'), quantity: '400' });
    await take('material-uses', { usedAt: AT, partId: partId('UL-8'), quantity: '299.5' });
    await take('material-uses', { usedAt: AT, description: 'River gravel', quantity: '0.1', unit: 'ton' });
    await take('material-uses', { usedAt: AT, description: 'river gravel', quantity: '0.2', unit: 'ton' });
    await take('material-uses', { usedAt: AT, description: 'River gravel', quantity: '3', unit: 'yd3' });
    const body = await totals();
    const shown = (body.materials as Record<string, unknown>[]).map(({ description, unit, used, quoted }) => [String(description).toLowerCase(), unit, used, quoted]);
    expect(shown).toEqual([['part skim-1', 'each', '0', '1'], ['part ul-8', 'ft2', '699.5', '640'], ['part pump-26', 'each', '0', '2'], ['river gravel', 'ton', '0.3', null], ['river gravel', 'yd3', '3', null]]);
    expect(JSON.stringify(body)).not.toMatch(/412\.35|556\.67|"(unitPrice|unitCost|amount|cost)"/);
  });

  it('speak the units of the company', async () => {
    await company.owner.patch('/v1/company', { unitSystem: 'metric' });
    const body = await totals();
    expect([body.surveyedSediment.unit, body.loads[0].volume.unit, body.loads[0].weight.unit, body.depths[0].found.meanDepth.unit]).toEqual(['m3', 'm3', 't', 'cm']);
    await company.owner.patch('/v1/company', { unitSystem: 'us' });
  });

  it('answer 304 until something changes, and 404 for a job of somebody else', async () => {
    const path = `/v1/jobs/${jobId}/field-totals`;
    const tag = (await company.crew.get(path)).headers['etag'] as string;
    expect((await company.crew.get(path).set('if-none-match', tag)).status).toBe(304);
    await take('material-uses', { usedAt: AT, partId: partId('SKIM-1'), quantity: '1' });
    expect((await company.crew.get(path).set('if-none-match', tag)).status).toBe(200);
    const other = await makeTestCompany(test);
    expect((await other.owner.get(path)).status).toBe(404);
    expect((await company.owner.get(`/v1/jobs/${uuidv7()}/field-totals`)).status).toBe(404);
  });

  it('need no survey, and the same number of statements however many records there are', async () => {
    const { jobId: job } = await acceptSimpleWork(company, '250.00');
    expect(await totals(job)).toMatchObject({ surveyId: null, surveyedSediment: null, materials: [], loads: [] });
    const before = (await statementsDuring(test, () => totals())).length;
    expect(before).toBeGreaterThan(5);
    await test.sql(
      `INSERT INTO hauled_load (company_id, id, job_id, happened_at, material, loads) SELECT $1, uuidv7(), $2, now(), 'sediment', 500 FROM generate_series(1, 3000)`,
      [company.id, jobId],
    );
    expect(await statementsDuring(test, () => totals())).toHaveLength(before);
    expect((await totals()).loads[0].loads).toBe(1_500_006);
  });
});
