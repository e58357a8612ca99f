import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond } from '../support/test-pond.js';

const ft = (value: number) => ({ value, unit: 'ft' });
const readings = [[18, 27], [20, 30], [22, 30], [16, 25]].map(([toSediment, toBottom]) => ({ toSediment, toBottom }));
// The worked example of the contract: an ellipse of 24 ft by 16 ft with four readings.
const worked = { surveyedOn: '2027-04-12', outline: { shape: 'ellipse', length: ft(24), width: ft(16) }, probes: { unit: 'in', readings } };

describe('takeoff', () => {
  let test: TestApp;
  let company: TestCompany;
  let featureId: string;
  const survey = async (body: object): Promise<string> => {
    const made = await company.estimator.post('/v1/surveys', { featureId, ...body });
    expect(made.status).toBe(201);
    return `/v1/surveys/${made.body.id}`;
  };

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    ({ featureId } = await makeTestPond(company));
  });
  afterAll(() => test.close());

  it('computes the worked example, and shows a crew member how', async () => {
    const answer = await company.crew.get(`${await survey(worked)}/takeoff`);
    expect(answer.status).toBe(200);
    const rounded = Object.fromEntries(
      Object.entries(answer.body as Record<string, { value: number; unit: string }>)
        .filter(([name]) => !['surveyId', 'sedimentByPlace', 'warnings', 'edgeStoneWeight', 'edgeStoneNeeded', 'sedimentWeight', 'sedimentWeightDrained'].includes(name))
        .map(([name, { value, unit }]) => [name, `${value.toFixed(4)} ${unit}`]),
    );
    expect(rounded).toEqual({
      surfaceArea: '301.5929 ft2',
      perimeter: '63.4618 ft',
      sedimentMeanThickness: '9.0000 in',
      sedimentVolume: '8.3776 yd3',
      meanDepth: '28.0000 in',
      maxDepth: '30.0000 in',
      waterVolume: '5264.1669 gal',
      waterVolumeNow: '3572.1132 gal',
      // (24 + 2 × 2.5 + 2) × (16 + 2 × 2.5 + 2) ft
      linerSheetArea: '713.0000 ft2',
      linerSheetLength: '31.0000 ft',
      linerSheetWidth: '23.0000 ft',
      underlaymentArea: '713.0000 ft2',
      // 63.4618 ft × 1 ft × 1 ft × 0.3 / 27
      edgeVoidVolume: '0.7051 yd3',
      reclaimedStoneWeight: '0.0000 ton',
      sedimentVolumeDug: '10.4720 yd3',
      // × (1 + 1 × 2.65) / (1 + 1.5 × 2.65)
      sedimentVolumeDrained: '6.1464 yd3',
      // 9.4 tons as dug, then 7.5 tons, in a truck of 7.
      haulLoads: '2.0000 each',
      haulLoadsDrained: '2.0000 each',
    });
    // 63.4618 ft × 165 lb/ft3 × 0.7, and 1.122 tons/yd3 at 150 % of water.
    expect(answer.body.edgeStoneWeight).toMatchObject({ unit: 'ton', value: expect.closeTo(3.665, 2) as number });
    expect(answer.body.edgeStoneNeeded).toEqual({ ...answer.body.edgeStoneNeeded, unit: 'ton', value: answer.body.edgeStoneWeight.value });
    expect(answer.body.sedimentWeight).toMatchObject({ unit: 'ton', value: expect.closeTo(8.3776 * 1.122, 1) as number });
    // 8.3776 yd3 × 27 × 62.4 × 2.65 / 4.975 lb/ft3 of dry solids, and as much water.
    expect(answer.body.sedimentWeightDrained).toMatchObject({ unit: 'ton', value: expect.closeTo(7.518, 3) as number });
    expect(answer.body.warnings).toEqual([]);
    expect(answer.body.sedimentByPlace).toBeNull();
    const { working, value } = answer.body.sedimentVolume;
    expect(working.rule).toContain('surface area × mean thickness');
    expect(Number(working.steps.at(-1).value)).toBe(value);
    expect(working.steps.at(-1).unit).toBe('yd3');
  });

  it('shows the working of every figure, and what it assumes', async () => {
    const { body } = await company.crew.get(`${await survey(worked)}/takeoff`);
    for (const [name, figure] of Object.entries(body as Record<string, { value?: number; working?: { steps: { value: string; unit?: string }[] }; unit?: string }>)) {
      if (figure?.working === undefined) continue;
      const last = figure.working.steps.at(-1);
      expect([name, Number(last?.value), last?.unit]).toEqual([name, figure.value, figure.unit]);
    }
    const sources = (name: string) => Object.fromEntries(body[name].working.inputs.map((input: { name: string; source?: string }) => [input.name, input.source]));
    expect(sources('sedimentWeight')).toMatchObject({ 'water content': 'assumed', bulking: 'assumed' });
    expect(sources('haulLoads')['box']).toContain('common practice');
  });

  it('counts the loads of the truck that is asked for', async () => {
    const path = `${await survey(worked)}/takeoff`;
    const loads = async (query: string) => {
      const { body, headers } = await company.crew.get(`${path}?${query}`);
      return [body.haulLoads.value, body.haulLoadsDrained.value, headers['etag']];
    };
    // 10.472 yd3 and 9.4 tons as dug; drained and loaded again 7.683 yd3 and 7.5 tons.
    expect(await loads('truckVolume=12&truckPayload=10')).toEqual([1, 1, '"1-us-12-10"']);
    expect(await loads('truckVolume=3.5&truckPayload=20')).toEqual([3, 3, '"1-us-3.5-20"']);
    expect(await loads('units=metric&truckPayload=3')).toEqual([3, 3, '"1-metric--3"']);
    expect((await company.crew.get(`${path}?truckVolume=0&truckPayload=big`)).body).toMatchObject({ status: 400, errors: [{ pointer: '/truckVolume' }, { pointer: '/truckPayload' }] });
  });

  it('buys less stone where some lies on the site, by weight or by the heap', async () => {
    const reclaimedMaterials = [
      { kind: 'stone', quantity: { value: 1, unit: 'ton' } },
      { kind: 'stone', quantity: { value: 1, unit: 'm3' } },
      { kind: 'stone', quantity: { value: 40, unit: 'each' } },
      { kind: 'driftwood', quantity: { value: 2, unit: 'ton' } },
    ];
    const { body } = await company.crew.get(`${await survey({ ...worked, reclaimedMaterials })}/takeoff?units=metric`);
    // 0.907 t, and a heap of 2,643 kg/m3 with 30 % gaps.
    expect(body.reclaimedStoneWeight).toMatchObject({ unit: 't', value: expect.closeTo(0.90718474 + 1.8501, 9) as number });
    expect(body.edgeStoneNeeded.value - body.edgeStoneWeight.value).toBeCloseTo(body.reclaimedStoneWeight.value, 9);
  });

  it('gives sediment and water by place too, for each edge, and says how many readings are missing', async () => {
    const outline = { shape: 'polygon', unit: 'ft', points: [[0, 0], [20, 0], [20, 20], [0, 20]] };
    // 27 in of pyramid: a third of its prism, 400 x 2.25 / 3 = 300 ft3 of water; the sediment 9 in at the middle, 6 in at the shore.
    const placed = [[10, 10, 18, 27], [0, 10, 20, 26]].map(([x, y, toSediment, toBottom]) => ({ at: [x, y], toSediment, toBottom }));
    const path = `${await survey({ surveyedOn: '2027-04-12', outline, probes: { unit: 'in', readings: placed } })}/takeoff`;
    const { sedimentByPlace: byPlace, sedimentVolume, warnings } = (await company.crew.get(path)).body;
    expect(byPlace.byEdge.map(({ edge }: { edge: string }) => edge)).toEqual(['zero', 'nearest', 'shore-readings']);
    const [zero, nearest, along] = byPlace.byEdge;
    // Shore at 0, the reading on it at 6 in: the pyramid of the middle, and the two triangles on the left with a mean of 15 / 3 in.
    expect(zero.sedimentVolume).toMatchObject({ unit: 'yd3', value: expect.closeTo((300 * 9 + 100 * 15) / 3 / 12 / 27, 9) });
    expect(along.sedimentVolume.value).toBeCloseTo((400 * 21) / 3 / 12 / 27, 9);
    expect(nearest.sedimentVolume.value).toBeGreaterThan(zero.sedimentVolume.value);
    expect(zero.waterVolume.unit).toBe('gal');
    expect(sedimentVolume.value).toBeCloseTo((400 * 7.5) / 12 / 27, 9);
    // 9 and 6 in: deviation 2.1213 in, so 1.5 in of standard error.
    expect(byPlace.standardError).toMatchObject({ unit: 'yd3', value: expect.closeTo((400 * 1.5) / 12 / 27, 9) });
    expect(warnings).toEqual([expect.stringContaining(`about ${byPlace.extraReadings} more readings`)]);
    expect((await company.crew.get(`${path}?units=metric`)).body.sedimentByPlace.byEdge[0].waterVolume.unit).toBe('L');
  });

  it('gives area and perimeter alone without readings', async () => {
    const answer = await company.crewLead.get(`${await survey({ surveyedOn: '2027-04-12', outline: { shape: 'rectangle', length: ft(20), width: ft(10) } })}/takeoff`);
    expect(answer.body).toMatchObject({
      surfaceArea: { value: 200, unit: 'ft2' }, perimeter: { value: 60, unit: 'ft' },
      sedimentMeanThickness: null, sedimentVolume: null, meanDepth: null, maxDepth: null, waterVolume: null, waterVolumeNow: null, warnings: [],
    });
  });

  it('answers in metric units where the request or the company says so', async () => {
    const path = `${await survey(worked)}/takeoff`;
    const metric = await company.crew.get(`${path}?units=metric`);
    expect([metric.body.surfaceArea, metric.body.perimeter, metric.body.sedimentVolume, metric.body.meanDepth, metric.body.waterVolume].map((figure: { unit: string }) => figure.unit)).toEqual(['m2', 'm', 'm3', 'cm', 'L']);
    expect(metric.body.meanDepth.value).toBeCloseTo(71.12, 10);
    expect((await company.crew.get(`${path}?units=cubits`)).body).toMatchObject({ status: 400, errors: [{ pointer: '/units' }] });
    const abroad = await makeTestCompany(test, { unitSystem: 'metric' });
    const pond = await makeTestPond(abroad);
    const { body } = await abroad.owner.post('/v1/surveys', { featureId: pond.featureId, ...worked });
    expect((await abroad.crew.get(`/v1/surveys/${body.id}/takeoff`)).body.waterVolume.unit).toBe('L');
  });

  it('is new after the survey or the units changed, and 304 while they stay', async () => {
    const path = await survey(worked);
    const first = await company.owner.get(`${path}/takeoff`);
    expect((await company.owner.get(`${path}/takeoff`).set('if-none-match', first.headers['etag'] ?? '')).status).toBe(304);
    expect((await company.owner.get(`${path}/takeoff?units=metric`).set('if-none-match', first.headers['etag'] ?? '')).status).toBe(200);
    await company.owner.patch(path, { outline: { width: { value: 12 } } }, '"1"');
    const second = await company.owner.get(`${path}/takeoff`).set('if-none-match', first.headers['etag'] ?? '');
    expect(second.status).toBe(200);
    expect(second.body.surfaceArea.value).toBeCloseTo(Math.PI * 12 * 6, 9);
  });

  it('warns of readings outside the outline and still counts them', async () => {
    const outline = { shape: 'polygon', unit: 'ft', points: [[0, 0], [20, 0], [20, 20], [0, 20]] };
    const probes = { unit: 'in', readings: [{ at: [10, 10], toSediment: 10, toBottom: 20 }, { at: [90, 90], toSediment: 20, toBottom: 40 }] };
    const answer = await company.owner.get(`${await survey({ surveyedOn: '2027-04-12', outline, probes })}/takeoff`);
    expect(answer.body.warnings).toEqual([expect.stringContaining('counted from 0: 1.'), expect.stringContaining('27 more readings')]);
    expect(answer.body.sedimentMeanThickness.value).toBe(15);
  });
});
