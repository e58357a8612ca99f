import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond } from '../support/test-pond.js';

const usd = (amount: string): object => ({ amount, currency: 'USD' });
const q = (value: number, unit: string): object => ({ value, unit });

/** A pond of 24 × 16 ft with 30 in of depth and 5,264 gal: 2 h of turnover take 43.9 gpm. */
const SURVEY = {
  surveyedOn: '2026-05-04',
  outline: { shape: 'ellipse', length: q(24, 'ft'), width: q(16, 'ft') },
  probes: { unit: 'in', readings: [{ toSediment: 18, toBottom: 27 }, { toSediment: 20, toBottom: 30 }, { toSediment: 22, toBottom: 30 }, { toSediment: 16, toBottom: 25 }] },
  pipeRun: { pipes: [{ side: 'discharge', length: q(60, 'ft'), innerDiameter: q(2.067, 'in'), fittings: [{ kind: 'elbow-90', count: 4 }] }], staticLift: q(8, 'ft') },
  reclaimedMaterials: [{ kind: 'stone', quantity: q(1, 'ton') }, { kind: 'plants', quantity: q(12, 'each') }],
};

describe('proposals', () => {
  let test: TestApp;
  let company: TestCompany;
  let survey: string;
  const parts: Record<string, string> = {};

  interface Item {
    scope: string;
    labor: { costCode: string; ruleId: string; description: string }[];
    parts: { kind: string; suggested: { partId: string; quantity: string; why: string; costCode: string } | null; alternatives: { partId: string }[]; ruledOut: { partId: string; reason: string }[] }[];
    warnings: string[];
  }
  const propose = async (scope: string[], more: object = {}): Promise<Item[]> => {
    const answer = await company.estimator.post(`/v1/surveys/${survey}/proposal`, { scope, ...more });
    expect([answer.status, answer.status === 200 ? '' : answer.text]).toEqual([200, '']);
    return answer.body.items as Item[];
  };

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    const { featureId } = await makeTestPond(company);
    const enter = async (path: string, body: object): Promise<string> => {
      const answer = await company.owner.post(path, body);
      if (answer.status !== 201) throw new Error(answer.text);
      return answer.body.id as string;
    };
    survey = await enter('/v1/surveys', { featureId, ...SURVEY });
    const part = async (sku: string, unit: string, cost: string, attributes: object): Promise<void> => {
      parts[sku] = await enter('/v1/parts', { sku, name: sku, unit, unitCost: usd(cost), markupPercent: '30', packSize: '1', taxCategory: 'materials', attributes });
    };
    await part('LINER-WIDE', 'ft2', '0.95', { kind: 'liner', rollWidth: q(30, 'ft'), rollLength: q(100, 'ft') });
    await part('LINER-DEAR', 'ft2', '1.40', { kind: 'liner', rollWidth: q(50, 'ft'), rollLength: q(100, 'ft') });
    await part('FLEECE', 'ft2', '0.30', { kind: 'underlayment', rollWidth: q(15, 'ft'), rollLength: q(300, 'ft') });
    await part('SKIM-SMALL', 'each', '200.00', { kind: 'skimmer', flowMinimum: q(10, 'gpm'), flowMaximum: q(30, 'gpm') });
    await part('SKIM-BIG', 'each', '300.00', { kind: 'skimmer', flowMinimum: q(20, 'gpm'), flowMaximum: q(80, 'gpm') });
    await part('SKIM-HUGE', 'each', '250.00', { kind: 'skimmer', flowMinimum: q(60, 'gpm'), flowMaximum: q(200, 'gpm') });
    const curve = (top: number): object[] => [0, 30, 60, 80].map((flow) => ({ flow: q(flow, 'gpm'), head: q(Math.max(top - 0.0035 * flow * flow, 0), 'ft') }));
    await part('PUMP-FIT', 'each', '400.00', { kind: 'pump', curve: curve(25), powerWatts: 400 });
    await part('PUMP-THIRSTY', 'each', '300.00', { kind: 'pump', curve: curve(25), powerWatts: 900 });
    await part('PUMP-WEAK', 'each', '100.00', { kind: 'pump', curve: curve(7), powerWatts: 60 });
    await part('STONE', 'ton', '90.00', { kind: 'stone' });
    const rule = (costCode: string, quantity: string, unit: string): Promise<string> => enter('/v1/labor-rules', { costCode, name: `Rule for ${costCode}`, quantity, unit, setupHours: '2', hoursPerUnit: '0.5', minimumHours: '2', effectiveFrom: '2026-01-01' });
    await rule('cleanout', 'sedimentVolume', 'yd3');
    await rule('edge', 'perimeter', 'ft');
    await rule('reclaim', 'count', 'each');
    await rule('planting', 'count', 'each');
  });
  afterAll(() => test.close());

  it('sizes the sheet from the greatest dimensions and the depth, the cheapest first', async () => {
    const [liner] = await propose(['liner']);
    const [sheet, fleece] = liner?.parts ?? [];
    // (24 + 2·2.5 + 2) × (16 + 2·2.5 + 2) ft = 31 × 23 ft, cut from a roll of 30 ft: 31 × 30 = 930 ft2
    expect(sheet?.suggested?.quantity).toBe('930');
    expect(sheet?.suggested?.partId).toBe(parts['LINER-WIDE']);
    expect(sheet?.alternatives.map(({ partId }) => partId)).toEqual([parts['LINER-DEAR']]);
    expect(fleece?.suggested?.why).toContain('2 strips 31.0 ft long: 2 of FLEECE; 1 seam');
    expect(liner?.warnings.join()).toContain('No labor rule for the cost code liner');
  });

  it('chooses by flow limits, and says why others would not do', async () => {
    const [skimmer] = await propose(['skimmer']);
    const [choice] = skimmer?.parts ?? [];
    expect(choice?.suggested?.partId).toBe(parts['SKIM-BIG']);
    expect(choice?.alternatives.map(({ partId }) => partId)).toEqual([parts['SKIM-SMALL']]);
    expect(choice?.ruledOut).toEqual([expect.objectContaining({ partId: parts['SKIM-HUGE'] })]);
    const [faster] = await propose(['skimmer'], { turnoverHours: 1 });
    expect(faster?.parts[0]?.ruledOut).toEqual([]);
  });

  it('ranks pumps over five years on the surveyed pipe run, and rules out one that is too weak', async () => {
    const [circulation] = await propose(['circulation']);
    const [choice] = circulation?.parts ?? [];
    expect(choice?.suggested?.partId).toBe(parts['PUMP-FIT']);
    expect(choice?.alternatives.map(({ partId }) => partId)).toEqual([parts['PUMP-THIRSTY']]);
    expect(choice?.ruledOut).toEqual([expect.objectContaining({ partId: parts['PUMP-WEAK'] })]);
    expect(circulation?.warnings.join()).toContain('licensed electrician');
  });

  it('makes labor and no purchase of what is reclaimed, and buys that much less stone', async () => {
    const [edge] = await propose(['edge', 'plants']);
    expect(edge?.labor.map(({ description }) => description)).toEqual(['Rule for edge', 'Clean and set again the reclaimed stone: 1 ton']);
    // 63.4618 ft × 1 ft × 1 ft × 165 lb/ft3 × 0.7 = 3.665 ton, less 1, in whole tons as it is sold
    expect(edge?.parts[0]?.suggested?.quantity).toBe('3');
    const plants = (await propose(['plants']))[0];
    expect(plants?.labor.map(({ costCode, description }) => [costCode, description])).toEqual([['planting', 'Rule for planting'], ['reclaim', 'Divide and repot the reclaimed plants: 12 each']]);
    expect(plants?.parts).toEqual([{ kind: 'plant', what: 'plants', suggested: null, alternatives: [], ruledOut: [] }]);
  });

  it('takes cost codes of the company\'s own, and refuses a scope that is none', async () => {
    const [own] = await propose(['liner'], { costCodes: [{ scope: 'liner', costCode: 'edge' }] });
    expect(own?.labor[0]?.costCode).toBe('edge');
    for (const [body, pointer] of [[{ scope: ['digging'] }, '/scope/0'], [{ scope: [] }, '/scope'], [{ scope: ['edge', 'edge'] }, '/scope/1'], [{ scope: ['edge'], edgeHeight: q(1, 'gal') }, '/edgeHeight/unit']] as const) {
      const answer = await company.estimator.post(`/v1/surveys/${survey}/proposal`, body);
      expect([body, answer.status, answer.body.errors[0].pointer]).toEqual([body, 400, pointer]);
    }
    expect((await company.crewLead.post(`/v1/surveys/${survey}/proposal`, { scope: ['edge'] })).status).toBe(403);
  });
});
