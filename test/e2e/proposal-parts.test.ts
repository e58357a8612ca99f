import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond } from '../support/test-pond.js';
import { usd } from '../support/test-quote.js';

const q = (value: number, unit: string): object => ({ value, unit });
const inch = (value: number): object => q(value, 'in');

/** An ellipse of 24 × 16 ft, 301.59 ft2; 30 in deep at the most; 5,264 gal, which 43.87 gpm turn over in 2 h. */
const POND = {
  surveyedOn: '2026-05-04',
  outline: { shape: 'ellipse', length: q(24, 'ft'), width: q(16, 'ft') },
  probes: { unit: 'in', readings: [{ toSediment: 18, toBottom: 27 }, { toSediment: 20, toBottom: 30 }, { toSediment: 22, toBottom: 30 }, { toSediment: 16, toBottom: 25 }] },
};
const RUN = {
  pipes: [
    { side: 'discharge', length: q(60, 'ft'), innerDiameter: inch(2.067), fittings: [{ kind: 'elbow-90', count: 4 }, { kind: 'exit', count: 1 }] },
    { side: 'suction', length: q(12, 'ft'), innerDiameter: q(52.5018, 'mm'), fittings: [{ kind: 'elbow-90', count: 1 }, { kind: 'ball-valve', count: 1 }, { kind: 'entrance-flush', count: 1 }] },
    { side: 'suction', length: q(0, 'ft'), innerDiameter: inch(3.068) },
  ],
  staticLift: q(8, 'ft'),
};
/** A shelf 4 ft wide at 10 in, then a floor of 16 ft at 30 in, both behind walls. */
const PROFILE = [[0, 0], [0, 10], [4, 10], [4, 30], [20, 30], [20, 0]].map(([ft, depth]) => ({ distance: q(ft as number, 'ft'), depth: inch(depth as number) }));

interface Line { partId: string; quantity: string }
interface Suggested extends Line { why: string; also: Line[] }
interface Need { kind: string; what: string; suggested: Suggested | null; alternatives: Suggested[]; ruledOut: { partId: string; reason: string }[] }
interface Item { scope: string; parts: Need[]; warnings: string[] }

describe('the parts of a proposal', () => {
  let test: TestApp;
  let company: TestCompany;
  let featureId: string;
  let pond: string;
  const ids: Record<string, string> = {};
  const skuOf = (id: string | undefined): string => Object.keys(ids).find((sku) => ids[sku] === id) ?? 'none';
  const shown = ({ partId, quantity }: Line): string => `${quantity} ${skuOf(partId)}`;

  const survey = async (more: object): Promise<string> => {
    const answer = await company.owner.post('/v1/surveys', { featureId, ...POND, ...more });
    expect([answer.status, answer.status === 201 ? '' : answer.text]).toEqual([201, '']);
    return answer.body.id as string;
  };
  const propose = async (scope: string[], more: object = {}, of = pond): Promise<Item[]> => {
    const answer = await company.estimator.post(`/v1/surveys/${of}/proposal`, { scope, ...more });
    expect([answer.status, answer.status === 200 ? '' : answer.text]).toEqual([200, '']);
    return answer.body.items as Item[];
  };
  const needs = async (scope: string[], kind: string, more: object = {}, of = pond): Promise<Need[]> => (await propose(scope, more, of)).flatMap(({ parts }) => parts.filter((need) => need.kind === kind));
  const need = async (...asked: Parameters<typeof needs>): Promise<Need> => (await needs(...asked))[0] as Need;
  const reasons = ({ ruledOut }: Need): Record<string, string> => Object.fromEntries(ruledOut.map(({ partId, reason }) => [skuOf(partId), reason]));
  const fits = ({ suggested, alternatives }: Need): string[] => [...(suggested === null ? [] : [suggested]), ...alternatives].map((one) => [one, ...one.also].map(shown).join(' + '));

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    ({ featureId } = await makeTestPond(company));
    pond = await survey({ pipeRun: RUN, reclaimedMaterials: [{ kind: 'plants', quantity: q(12, 'each') }, { kind: 'stone', quantity: q(1, 'yd3') }, { kind: 'stone', quantity: q(3, 'each') }], waterTests: [{ takenAt: '2026-05-04T10:00:00Z', temperature: { value: 8, unit: 'degC' } }] });
    const part = async (sku: string, unit: string, cost: string, attributes: object, packSize = '1'): Promise<void> => {
      const answer = await company.owner.post('/v1/parts', { sku, name: sku, unit, unitCost: usd(cost), markupPercent: '30', packSize, attributes });
      if (answer.status !== 201) throw new Error(answer.text);
      ids[sku] = answer.body.id as string;
    };
    const roll = (width: number, length?: number): object => ({ kind: 'liner', rollWidth: q(width, 'ft'), ...(length === undefined ? {} : { rollLength: q(length, 'ft') }) });
    await part('L-15', 'ft2', '0.95', roll(15, 100));
    await part('L-9', 'ft2', '0.95', roll(9));
    await part('L-ROLL', 'each', '800.00', roll(24, 40));
    await part('L-SIZE', 'ft2', '0.50', { kind: 'liner' });
    await part('L-TON', 'ton', '1.00', roll(40, 40));
    await part('L-NARROW', 'ft', '0.01', roll(0.8, 100));
    await part('L-UNKNOWN', 'each', '1.00', roll(40));
    await part('FLEECE-ROLL', 'each', '10.00', { kind: 'underlayment', rollWidth: q(15, 'ft'), rollLength: q(20, 'ft') });
    await part('FLEECE', 'yd', '5.00', { kind: 'underlayment', rollWidth: q(2, 'm'), rollLength: q(10, 'm') });
    const curve = (top: number): object[] => [0, 20, 30, 40, 50, 60, 70, 80].map((flow) => ({ flow: q(flow, 'gpm'), head: q(Math.max(top - 0.0035 * flow * flow, 0), 'ft') }));
    await part('PUMP', 'each', '400.00', { kind: 'pump', curve: curve(25), powerWatts: 400 });
    await part('PUMP-STRONG', 'each', '600.00', { kind: 'pump', curve: curve(34), powerWatts: 700 });
    await part('SKIM', 'each', '300.00', { kind: 'skimmer', flowMinimum: q(20, 'gpm'), flowMaximum: q(60, 'gpm'), headLoss: q(0.5, 'ft'), headLossFlow: q(40, 'gpm') });
    await part('SKIM-NONE', 'each', '1.00', { kind: 'skimmer', flowMaximum: q(0, 'gpm') });
    await part('SKIM-OTHER', 'each', '900.00', { kind: 'skimmer', flowMaximum: q(90, 'gpm') });
    await part('FILTER', 'each', '200.00', { kind: 'filter', flowMaximum: q(30, 'gpm'), headLoss: q(1, 'ft'), headLossFlow: q(20, 'gpm'), surfaceArea: q(50, 'ft2') });
    const size = inch(2.067);
    await part('PIPE-FT', 'ft', '1.00', { kind: 'pipe', innerDiameter: size }, '20');
    await part('PIPE-10', 'each', '9.00', { kind: 'pipe', innerDiameter: inch(2.05), pieceLength: q(10, 'ft') });
    await part('PIPE-THIN', 'ft', '0.10', { kind: 'pipe', innerDiameter: inch(1.939) });
    await part('PIPE-PIECE', 'each', '0.10', { kind: 'pipe', innerDiameter: size });
    await part('ELBOW', 'each', '2.00', { kind: 'fitting', fittingKind: 'elbow-90', innerDiameter: size }, '10');
    await part('ELBOW-1', 'each', '1.00', { kind: 'fitting', fittingKind: 'elbow-90', innerDiameter: inch(1.049) });
    await part('TEE', 'each', '1.00', { kind: 'fitting', fittingKind: 'tee-branch', innerDiameter: size });
    for (const lip of [12, 24, 36]) await part(`LIP-${lip}`, 'each', '100.00', { kind: 'spillway', lipWidth: inch(lip) });
    await part('LIP-SMALL', 'each', '10.00', { kind: 'spillway', lipWidth: inch(10), flowMaximum: q(20, 'gpm') });
    const doser = (litres: number, more: object): object => ({ kind: 'doser', reservoirVolume: q(litres, 'L'), ...more });
    const label = { dosePerDay: q(0.01, 'L'), doseFor: q(1000, 'gal') };
    await part('DOSER', 'each', '300.00', doser(2, { ...label, settingStep: q(1000, 'gal') }));
    await part('DOSER-SMALL', 'each', '100.00', doser(1, label));
    await part('DOSER-LARGE', 'each', '100.00', doser(5, { ...label, settingStep: q(10_000, 'gal') }));
    await part('DOSER-UNSAID', 'each', '50.00', doser(2, { dosePerDay: q(0.05, 'L') }));
    const depths = (least: number, most: number): object => ({ depthMinimum: inch(least), depthMaximum: inch(most) });
    await part('RUSH', 'each', '8.00', { kind: 'plant', coverArea: q(4, 'ft2'), ...depths(6, 12) });
    await part('LILY', 'each', '30.00', { kind: 'plant', coverArea: q(10, 'ft2'), ...depths(14, 24) });
    await part('LOTUS', 'each', '30.00', { kind: 'plant', coverArea: q(10, 'ft2'), ...depths(36, 48) });
    await part('GOLD', 'each', '6.00', { kind: 'fish', species: 'goldfish', grownMass: q(0.5, 'lb') });
    await part('TILAPIA', 'each', '1.00', { kind: 'fish', species: 'tilapia', grownMass: q(1, 'lb') });
    await part('WHALE', 'each', '1.00', { kind: 'fish', grownMass: q(100, 'lb') });
    await part('STONE', 'ton', '90.00', { kind: 'stone' }, '0.01');
  });
  afterAll(() => test.close());

  it('cut the sheet from two rolls where that costs least, and count seams and waste', async () => {
    const liner = await need(['liner'], 'liner');
    // 31 × 23 ft with laps of 3 in: a strip of 15 ft and one of 9 ft cover 23.75 ft; alone it takes 3 of 9 ft × 31 ft or 4 × 23 ft = 828 ft2, or 2 of 15 ft.
    expect(fits(liner)).toEqual(['465 L-15 + 279 L-9', '828 L-9', '1 L-ROLL', '930 L-15', '713 L-SIZE']);
    expect(liner.suggested?.why).toBe('A sheet of 31.0 ft × 23.0 ft, cut as 2 strips 31.0 ft long: 1 of L-15 and 1 of L-9; 1 seam, 31.0 ft in all, lapped 3 in; of 744.0 ft2 bought 23.3 ft2 (3 %) is waste.');
    // A foot of seam at 3.05: 706.80 + 31 × 3.05 = 801.35, more than the whole roll without a seam. L-9 turns: 3 strips of 31 ft have 62 ft of seam, 4 of 23 ft have 69.
    expect(fits(await need(['liner'], 'liner', { seamCostPerFoot: '3.05' }))).toEqual(['1 L-ROLL', '465 L-15 + 279 L-9', '930 L-15', '837 L-9', '713 L-SIZE']);
    expect(Object.keys(reasons(liner)).sort()).toEqual(['L-NARROW', 'L-TON', 'L-UNKNOWN']);
    expect((await propose(['liner']))[0]?.warnings.join()).toContain('Every seam is a place to leak');
  });

  it('join strips that are longer than their roll, in the unit that the roll is sold in', async () => {
    const fleece = await need(['liner'], 'underlayment', { seamLap: inch(0) });
    // Of the roll 2 strips of 20 + 11 ft: 4 rolls. Cut from 2 m width 31 ft
    // are 9.4488 m and 23 ft are 7.0104 m: 4 strips of 9.4488 m (41.33 yd), or 5 of 7.0104 m (38.33 yd).
    expect(fits(fleece)).toEqual(['4 FLEECE-ROLL', '39 FLEECE']);
    expect(fleece.suggested?.why).toContain('2 strips 31.0 ft long: 2 of FLEECE-ROLL; 3 seams');
  });

  it('stand in the draft line by line, in whole packs', async () => {
    const { body } = await company.estimator.post(`/v1/surveys/${pond}/proposal`, { scope: ['liner', 'circulation'] });
    expect(body.draft.parts.map(shown)).toEqual(expect.arrayContaining(['465 L-15', '279 L-9', '1 PUMP', '10 ELBOW']));
    const quote = await company.estimator.post('/v1/quotes', { title: 'Liner and loop', ...body.draft });
    expect([quote.status, quote.body.lines?.length]).toEqual([201, body.draft.parts.length]);
    expect(quote.body.lines.map(({ quantity }: { quantity: string }) => quantity)).toEqual(body.draft.parts.map(({ quantity }: Line) => quantity));
  });

  /** The flow that a proposal says the pump gives, in gpm. */
  const given = (pump: Need): number => Number(/Gives ([\d.]+) gpm/.exec(pump.suggested?.why ?? '')?.[1]);
  /** Pump and pipes meet where these are equal, ft at gpm; friction by the textbook's Hazen-Williams, K with f_T 0.019. */
  const meets = (vessels: (gpm: number) => number): number => {
    const head = (Q: number): number => 8 + (72 / 100) * 0.2083 * (100 / 150) ** 1.852 * (Q ** 1.852 / 2.067 ** 4.8655) + ((5 * 30 + 3) * 0.019 + 1 + 0.5) * ((0.4085 * Q) / 2.067 ** 2) ** 2 / 64.348 + vessels(Q);
    let [low, high] = [0, 80];
    for (let i = 0; i < 60; i += 1) {
      const middle = (low + high) / 2;
      if (25 - 0.0035 * middle ** 2 > head(middle)) low = middle;
      else high = middle;
    }
    return low;
  };
  /** One skimmer, and two filters that share the flow. */
  const both = (gpm: number): number => 0.5 * (gpm / 40) ** 2 + (gpm / 2 / 20) ** 2;

  it('rank pumps against the skimmer and the filter that are suggested with them', async () => {
    const alone = await need(['circulation'], 'pump');
    expect(given(alone) / meets(() => 0)).toBeCloseTo(1, 2);
    const pump = await need(['skimmer', 'circulation', 'filter'], 'pump');
    expect(pump.suggested?.why).toContain('against the losses of pipes, SKIM, 2 × FILTER,');
    expect(given(pump) / meets(both)).toBeCloseTo(1, 2);
    expect(given(pump)).toBeLessThan(given(alone));
    // 5,264 gal / 60 / the flow; 0.4 kW × 8,760 h × 0.15
    expect(alone.suggested?.why).toContain(`turns the water over in ${(5264.2 / 60 / given(alone)).toFixed(1)} h; 3504 kWh and 525.60 USD of energy a year`);
    const named = await need(['circulation'], 'pump', { skimmerPartId: ids['SKIM'], filterPartId: (ids['FILTER'] ?? '').toUpperCase() });
    expect(given(named)).toBe(given(pump));
    const onSite = await need(['circulation'], 'pump', { vessels: [{ name: 'old filter', flow: q(40, 'gpm'), head: q(12, 'ft') }] });
    expect(fits(onSite)).toEqual(['1 PUMP-STRONG']);
    expect(reasons(onSite)['PUMP']).toMatch(/It gives [\d.]+ gpm of the 43.9 gpm wanted/);
  });

  it('choose the filter once more when the pump gives more than was wanted', async () => {
    // A turnover in 3 h takes 29.2 gpm, for which one filter would do; the pump gives over 50.
    const alone = await need(['filter'], 'filter', { turnoverHours: 3 });
    expect([fits(alone), alone.suggested?.why]).toEqual([['1 FILTER'], 'Each takes up to 30.0 gpm; the loop is to give 29.2 gpm.']);
    const filter = await need(['circulation', 'filter'], 'filter', { turnoverHours: 3 });
    expect([fits(filter), filter.suggested?.why]).toEqual([['2 FILTER'], expect.stringMatching(/the suggested pump gives 5\d\.\d gpm/)]);
    expect((await need(['filter'], 'filter', { loopFlow: q(70, 'gpm') })).suggested?.quantity).toBe('3');
  });

  it('warn of losses that are not known, and of a skimmer that gets more than it takes', async () => {
    const [circulation] = await propose(['circulation'], { skimmerPartId: ids['SKIM-OTHER'] });
    expect(circulation?.warnings.join()).toContain('The head loss of SKIM-OTHER is not in the catalog');
    // One takes 43.9 gpm and not the 52 that the pump gives, and two of them would get too little.
    const other = await makeTestCompany(test);
    const pumpAnd = { kind: 'skimmer', flowMinimum: q(30, 'gpm'), flowMaximum: q(45, 'gpm'), headLoss: q(0.1, 'ft'), headLossFlow: q(40, 'gpm') };
    const pump = (await company.owner.get(`/v1/parts/${ids['PUMP']}`)).body.attributes as object;
    for (const attributes of [pumpAnd, pump]) expect((await other.owner.post('/v1/parts', { sku: uuidv7(), name: 'Narrow', unit: 'each', unitCost: usd('9.00'), markupPercent: '0', attributes })).status).toBe(201);
    const theirs = await other.owner.post('/v1/surveys', { featureId: (await makeTestPond(other)).featureId, ...POND, pipeRun: RUN });
    const answer = await other.owner.post(`/v1/surveys/${theirs.body.id}/proposal`, { scope: ['skimmer', 'circulation'] });
    const [skimmer, loop] = answer.body.items as Item[];
    expect(skimmer?.parts[0]?.suggested?.quantity).toBe('1');
    expect(loop?.warnings.join()).toMatch(/each Narrow gets 5\d\.\d gpm, and takes up to 45.0 gpm/);
  });

  it('name a skimmer and a filter of the own catalog only', async () => {
    const other = await makeTestCompany(test);
    const theirs = await other.owner.post('/v1/parts', { sku: 'S', name: 'S', unit: 'each', unitCost: usd('1.00'), markupPercent: '0', attributes: { kind: 'skimmer' } });
    for (const [body, status, pointer] of [
      [{ skimmerPartId: theirs.body.id }, 422, '/skimmerPartId'],
      [{ filterPartId: uuidv7() }, 422, '/filterPartId'],
      [{ filterPartId: ids['SKIM'] }, 400, '/filterPartId'],
      [{ displacedVolume: q(5265, 'gal') }, 400, '/displacedVolume'],
      [{ plantCover: 1.1 }, 400, '/plantCover'],
      [{ waterfallLook: 'flood' }, 400, '/waterfallLook'],
      [{ vessels: [{ name: 'old', flow: q(0, 'gpm'), head: q(1, 'ft') }] }, 400, '/vessels/0/flow/value'],
    ] as const) {
      const answer = await company.estimator.post(`/v1/surveys/${pond}/proposal`, { scope: ['edge'], ...body });
      expect([answer.status, answer.body.errors?.[0]?.pointer]).toEqual([status, pointer]);
    }
  });

  it('count out pipe and fittings by size, as they are sold, and say what the catalog lacks', async () => {
    const pipes = await needs(['circulation'], 'pipe');
    // 60 + 12 ft: 8 pieces of 10 ft at 9.00, or 4 packs of 20 ft
    expect(pipes.map(({ what }) => what)).toEqual(['72.0 ft of pipe, 2.067 in inside']);
    expect(pipes.map(fits)).toEqual([['8 PIPE-10', '80 PIPE-FT']]);
    expect(reasons(pipes[0] as Need)).toEqual({ 'PIPE-THIN': 'It is 1.939 in inside; the surveyed run is 2.067 in.', 'PIPE-PIECE': expect.stringContaining('length of a piece is not in the catalog') });
    const fittings = await needs(['circulation'], 'fitting');
    expect(fittings.map(({ what }) => what)).toEqual(['5 elbow-90, 2.067 in inside', '1 ball-valve, 2.067 in inside']);
    expect(fittings.map(fits)).toEqual([['10 ELBOW'], []]);
    expect(reasons(fittings[0] as Need)).toEqual({ 'ELBOW-1': 'It is 1.049 in inside; the surveyed run is 2.067 in.' });
    expect((await propose(['circulation']))[0]?.warnings).toContain('The catalog has nothing to suggest for: 1 ball-valve, 2.067 in inside.');
  });

  it('choose the widest lip that the pump feeds with the wanted look', async () => {
    // 100 gal an hour for each inch: 24 in take 40 gpm, 36 in take 60; the pump gives about 52.
    const lip = await need(['circulation', 'waterfall'], 'spillway');
    expect(fits(lip)).toEqual(['1 LIP-24', '1 LIP-12']);
    expect(reasons(lip)).toEqual({ 'LIP-36': expect.stringMatching(/^A sheet over its lip of 36 in needs 60.0 gpm; the pump gives 5\d/), 'LIP-SMALL': expect.stringContaining('It takes up to 20.0 gpm') });
    expect((await need(['waterfall', 'circulation'], 'spillway', { waterfallLook: 'trickle' })).suggested?.partId).toBe(ids['LIP-36']);
    // A cascade over 12 in takes 40 gpm; over 24 in 80, which no pump gives.
    expect(fits(await need(['circulation', 'waterfall'], 'spillway', { waterfallLook: 'cascade' }))).toEqual(['1 LIP-12']);
    const [today] = await propose(['waterfall'], { loopFlow: q(30, 'gpm') });
    expect(reasons(await need(['skimmer'], 'skimmer'))['SKIM-NONE']).toContain('more than 10 of them');
    expect(fits(today?.parts[0] as Need)).toEqual(['1 LIP-12']);
    expect(today?.warnings.join()).toContain('makes a full-sheet, not a sheet');
    expect(reasons(await need(['waterfall'], 'spillway', { loopFlow: q(400, 'gpm') }))['LIP-12']).toContain('would stand 4.984 in deep');
    expect((await propose(['waterfall']))[0]?.warnings.join()).toContain('put circulation into the scope, or give loopFlow');
  });

  it('name the alternative pump that would feed a lip when the suggested one does not', async () => {
    const other = await makeTestCompany(test);
    for (const sku of ['PUMP', 'PUMP-STRONG', 'LIP-36']) {
      const { attributes, unitCost, unit } = (await company.owner.get(`/v1/parts/${ids[sku]}`)).body;
      expect((await other.owner.post('/v1/parts', { sku, name: sku, unit, unitCost, markupPercent: '0', attributes })).status).toBe(201);
    }
    const theirs = await other.owner.post('/v1/surveys', { featureId: (await makeTestPond(other)).featureId, ...POND, pipeRun: RUN });
    const [, waterfall] = (await other.owner.post(`/v1/surveys/${theirs.body.id}/proposal`, { scope: ['circulation', 'waterfall'] })).body.items as Item[];
    expect(waterfall?.parts[0]?.suggested).toBeNull();
    expect(waterfall?.warnings.join()).toMatch(/PUMP-STRONG, an alternative to the suggested pump, gives 70\.\d gpm: enough for a sheet over LIP-36/);
  });

  it('set a doser to the net water, and rule out those that would run dry or overdose', async () => {
    const doser = await need(['doser'], 'doser', { displacedVolume: q(200, 'gal') });
    // 5,264 − 200 gal in steps of 1,000: 5 × 10 mL a day, 2 L last 40 days
    expect(fits(doser)).toEqual(['1 DOSER', '1 DOSER-UNSAID']);
    expect(doser.suggested?.why).toBe('Set to 5000 gal for a net water volume of 5064 gal, it gives 50.0 mL a day, and its reservoir lasts 5.7 weeks.');
    expect(reasons(doser)).toEqual({ 'DOSER-SMALL': expect.stringContaining('lasts 2.8 weeks'), 'DOSER-LARGE': expect.stringContaining('it would overdose every day') });
    expect((await need(['doser'], 'doser', { displacedVolume: q(1000, 'gal') })).suggested?.why).toContain('Set to 4000 gal');
  });

  it('count the plants that cover half of the surface, less those that are set again', async () => {
    const plants = await need(['plants'], 'plant');
    // 150.8 ft2 / 4 = 37.7 → 38, and / 10 → 16; 12 are there
    expect(fits(plants)).toEqual(['4 LILY', '26 RUSH']);
    expect(reasons(plants)).toEqual({ LOTUS: 'It stands at least 36 in deep; the pond is 2.5 ft at the most.' });
    const few = await need(['plants'], 'plant', { plantCover: 0.1 });
    expect([few.suggested, reasons(few)['RUSH']]).toEqual([null, 'Nothing is to be bought: 12 are set again, and 8 are enough.']);
    expect(reasons(await need(['plants'], 'plant', { plantCover: 0 }))['RUSH']).toBe('No cover is wanted.');
  });

  it('find no place for plants whose depth the profile does not have, and warn where it is scarce', async () => {
    const shelved = await survey({ depthProfile: PROFILE });
    const [item] = await propose(['plants'], {}, shelved);
    expect(fits(item?.parts[0] as Need)).toEqual(['38 RUSH']);
    expect(reasons(item?.parts[0] as Need)['LILY']).toBe('Nowhere on the surveyed profile is a place 14 in to 24 in deep.');
    expect(item?.warnings.join()).toContain('Only 20 % of the surveyed profile is 6 in to 12 in deep');
    expect(item?.warnings.join()).toContain('invasive');
    const noWidth = await survey({ depthProfile: PROFILE.slice(0, 2) });
    expect(fits(await need(['plants'], 'plant', {}, noWidth))).toEqual(['38 RUSH', '16 LILY']);
  });

  it('stock what water and filter carry beside the fish that are there', async () => {
    const fish = await need(['fish'], 'fish');
    // Without aeration 30 lb of feed an acre: 301.59 / 43,560 × 30 / 1 % = 20.77 lb
    expect(fits(fish)).toEqual(['41 GOLD']);
    expect(fish.suggested?.why).toContain('the feed carries 20.8 lb (30 lb of feed on an acre');
    expect(reasons(fish)).toEqual({ TILAPIA: 'At 8.0 degC, as a water test found, tilapia dies within days.', WHALE: expect.stringContaining('One weighs 100.0 lb when grown') });
    // With aeration 5,000 lb an acre: 34.62 lb
    expect(fits(await need(['fish'], 'fish', { aerated: true, fishThere: q(5, 'lb') }))).toEqual(['59 GOLD']);
    // Two filters of 50 ft2: 9.2903 m2 × 0.3 g / (10 g × 35 % × 0.092) = 8.656 kg = 19.08 lb
    expect(fits(await need(['fish', 'filter'], 'fish'))).toEqual(['38 GOLD']);
    // 30 lb: 13.61 kg × 10 g × 35 % × 0.092 / 0.3 g = 14.6 m2, 157 ft2
    expect((await propose(['filter'], { fishThere: q(30, 'lb') }))[0]?.warnings.join()).toContain('take about 157.2 ft2 of media (a sanity range, not a guarantee); the filter has 100.0 ft2');
    expect((await propose(['filter'], { fishThere: q(19, 'lb') }))[0]?.warnings.join()).not.toContain('of media');
    const [full] = await propose(['fish'], { fishThere: q(20.5, 'lb') });
    expect(full?.parts[0]?.suggested).toBeNull();
    expect(full?.warnings.join()).toContain('Stock only species that are legal');
  });

  it('buy less stone by what was heaped, and say that what was only counted is not taken off', async () => {
    const [edge] = await propose(['edge']);
    // 3.665 ton less 1 yd3 × 2,643 kg/m3 × 0.7 = 1.559 ton
    expect(Number(edge?.parts[0]?.suggested?.quantity)).toBeCloseTo(2.106, 1);
    expect(edge?.warnings.join()).toContain('only counted');
  });

  it('ask for what was not measured', async () => {
    const bare = await survey({ probes: null, outline: { shape: 'measured', area: q(300, 'ft2'), perimeter: q(64, 'ft') } });
    const items = await propose(['liner', 'skimmer', 'circulation', 'filter', 'waterfall', 'doser', 'fish'], {}, bare);
    const asks = Object.fromEntries(items.map(({ scope, warnings }) => [scope, warnings.join()]));
    expect(asks).toMatchObject({
      liner: expect.stringContaining('a length and a width'),
      skimmer: expect.stringContaining('rod readings'),
      circulation: expect.stringContaining('rod readings'),
      filter: expect.stringContaining('rod readings'),
      waterfall: expect.stringContaining('no pump could be suggested'),
      doser: expect.stringContaining('not checked against the water'),
      fish: expect.stringContaining('rod readings'),
    });
    expect(items.flatMap(({ parts }) => parts.map(({ suggested }) => suggested)).filter((one) => one !== null).map((one) => skuOf(one?.partId))).toEqual(['DOSER-UNSAID']);
  });

  it('do not take readings of no depth for a pond', async () => {
    const dry = await survey({ probes: { unit: 'in', readings: [{ toSediment: 0, toBottom: 0 }, { toSediment: 0, toBottom: 0 }] } });
    const [liner, skimmer] = await propose(['liner', 'skimmer'], { displacedVolume: q(1, 'gal') }, dry);
    expect([liner?.parts[0]?.suggested, skimmer?.parts[0]?.suggested]).toEqual([null, null]);
    expect((await company.owner.get(`/v1/surveys/${dry}/takeoff`)).status).toBe(200);
  });

  it('say when more would not do than are shown', async () => {
    const other = await makeTestCompany(test);
    const rows = Array.from({ length: 23 }, (_, i) => `S-${i},Skimmer,each,9.00,20,skimmer`);
    await test.request('post', '/v1/parts/import').set('authorization', `Bearer ${other.owner.token}`).set('content-type', 'text/csv').send(['sku,name,unit,unitCost,markupPercent,kind', ...rows].join('\n'));
    const theirs = await other.owner.post('/v1/surveys', { featureId: (await makeTestPond(other)).featureId, ...POND });
    const [skimmer] = (await other.owner.post(`/v1/surveys/${theirs.body.id}/proposal`, { scope: ['skimmer'] })).body.items as Item[];
    expect(skimmer?.parts[0]?.ruledOut).toHaveLength(20);
    expect(skimmer?.warnings).toContain('3 more would not do for skimmer; GET /v1/parts?kind=skimmer lists them.');
  });
});
