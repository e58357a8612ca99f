import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { usd } from '../support/test-quote.js';

let made = 0;
const part = (attributes: unknown) => ({ sku: `A-${++made}`, name: 'Part', unit: 'each', unitCost: usd('10.00'), markupPercent: '40', attributes });
const point = (gpm: number, ft: number) => ({ flow: { value: gpm, unit: 'gpm' }, head: { value: ft, unit: 'ft' } });
const pump = { kind: 'pump', curve: [point(0, 25), point(20, 23.6), point(60, 12.4)], powerWatts: 320 };

describe('the attributes of a part', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  it.each([
    ['pump', pump],
    ['pipe', { kind: 'pipe', innerDiameter: { value: 2.067, unit: 'in' }, pieceLength: { value: 10, unit: 'ft' } }],
    ['fitting', { kind: 'fitting', fittingKind: 'elbow-90', innerDiameter: { value: 2.067, unit: 'in' } }],
    ['spillway', { kind: 'spillway', lipWidth: { value: 24, unit: 'in' }, flowMinimum: { value: 1200, unit: 'gph' }, flowMaximum: { value: 6000, unit: 'gph' } }],
    ['plant', { kind: 'plant', coverArea: { value: 4, unit: 'ft2' }, depthMinimum: { value: 0, unit: 'in' }, depthMaximum: { value: 12, unit: 'in' } }],
    ['fish', { kind: 'fish', species: 'goldfish', grownMass: { value: 0.5, unit: 'lb' } }],
    ['liner', { kind: 'liner', rollWidth: { value: 30, unit: 'ft' }, rollLength: { value: 100, unit: 'ft' } }],
    ['underlayment', { kind: 'underlayment', rollWidth: { value: 15, unit: 'ft' }, rollLength: { value: 300, unit: 'ft' } }],
    ['skimmer', { kind: 'skimmer', flowMinimum: { value: 1500, unit: 'gph' }, flowMaximum: { value: 75, unit: 'gpm' }, headLoss: { value: 6, unit: 'in' }, headLossFlow: { value: 50, unit: 'gpm' } }],
    ['filter', { kind: 'filter', surfaceArea: { value: 400, unit: 'ft2' }, flowMinimum: { value: 5, unit: 'gpm' }, flowMaximum: { value: 50, unit: 'gpm' } }],
    ['doser', { kind: 'doser', reservoirVolume: { value: 1, unit: 'gal' }, dosePerDay: { value: 0.12, unit: 'L' }, doseFor: { value: 1000, unit: 'gal' }, settingStep: { value: 250, unit: 'gal' } }],
    ['stone', { kind: 'stone', densityKgPerM3: 2643 }],
    ['gravel', { kind: 'gravel', bulkDensityKgPerM3: 1500, voidFraction: 0.4 }],
    ['other', { kind: 'other' }],
  ])('of a %s come back as they were entered, and the list finds the kind', async (kind, attributes) => {
    const { status, body } = await company.estimator.post('/v1/parts', part(attributes));
    expect([status, body.attributes]).toEqual([201, attributes]);
    const list = await company.owner.get(`/v1/parts?kind=${kind}`);
    expect(list.body.items.map(({ id }: { id: string }) => id)).toEqual([body.id]);
  });

  it('make a repeated create the same, whether what is left empty is missing or null', async () => {
    const body = { id: uuidv7(), ...part({ kind: 'doser' }) };
    const first = await company.owner.post('/v1/parts', body);
    const again = await company.owner.post('/v1/parts', { ...body, attributes: { kind: 'doser', reservoirVolume: null } });
    expect([first.status, again.status, again.body.attributes]).toEqual([201, 200, { kind: 'doser' }]);
  });

  it('can be changed one by one, to another kind, and taken away', async () => {
    const { body } = await company.owner.post('/v1/parts', part(pump));
    const path = `/v1/parts/${body.id}`;
    expect((await company.owner.patch(path, { attributes: { powerWatts: 340 } })).body.attributes).toEqual({ ...pump, powerWatts: 340 });
    const mixed = await company.owner.patch(path, { attributes: { kind: 'pipe' } });
    expect([mixed.status, mixed.body.errors.map((error: { pointer: string }) => error.pointer).sort()]).toEqual([400, ['/attributes/curve', '/attributes/powerWatts']]);
    expect((await company.owner.patch(path, { attributes: { kind: 'pipe', curve: null, powerWatts: null } })).body.attributes).toEqual({ kind: 'pipe' });
    expect((await company.owner.patch(path, { name: 'A pipe' })).body.attributes).toEqual({ kind: 'pipe' });
    expect((await company.owner.patch(path, { attributes: null })).body.attributes).toBeNull();
    expect((await company.owner.get(`/v1/parts?kind=pipe&sku=${body.sku}`)).body.items).toEqual([]);
  });

  it.each([
    ['a pump curve that rises', { ...pump, curve: [point(0, 25), point(20, 25), point(40, 25.1)] }, '/attributes/curve/2/head'],
    ['two heads for one flow', { ...pump, curve: [point(0, 25), point(20, 23), point(20, 21)] }, '/attributes/curve/2/flow'],
    ['a curve that rises only in other units', { ...pump, curve: [point(0, 25), { flow: { value: 100, unit: 'L/min' }, head: { value: 7.7, unit: 'm' } }] }, '/attributes/curve/1/head'],
    ['a curve of one point', { ...pump, curve: [point(0, 25)] }, '/attributes/curve'],
    ['a curve in the wrong unit', { ...pump, curve: [point(0, 25), { flow: { value: 3, unit: 'ft' }, head: { value: 7, unit: 'm' } }] }, '/attributes/curve/1/flow/unit'],
    ['a pump without power', { kind: 'pump', powerWatts: 0 }, '/attributes/powerWatts'],
    ['a pipe without an opening', { kind: 'pipe', innerDiameter: { value: 0, unit: 'in' } }, '/attributes/innerDiameter/value'],
    ['flow limits the wrong way round', { kind: 'skimmer', flowMinimum: { value: 50, unit: 'gpm' }, flowMaximum: { value: 50, unit: 'gph' } }, '/attributes/flowMaximum'],
    ['a head loss without its flow', { kind: 'filter', headLoss: { value: 2, unit: 'ft' } }, '/attributes/headLossFlow'],
    ['a flow without its head loss', { kind: 'skimmer', headLossFlow: { value: 2, unit: 'gpm' } }, '/attributes/headLoss'],
    ['a head loss at no flow', { kind: 'skimmer', headLoss: { value: 2, unit: 'ft' }, headLossFlow: { value: 0, unit: 'gpm' } }, '/attributes/headLossFlow/value'],
    ['a fitting that nobody sells', { kind: 'fitting', fittingKind: 'exit' }, '/attributes/fittingKind'],
    ['a spillway without a lip', { kind: 'spillway', lipWidth: { value: 0, unit: 'in' } }, '/attributes/lipWidth/value'],
    ['spillway limits the wrong way round', { kind: 'spillway', flowMinimum: { value: 50, unit: 'gpm' }, flowMaximum: { value: 40, unit: 'gpm' } }, '/attributes/flowMaximum'],
    ['planting depths the wrong way round', { kind: 'plant', depthMinimum: { value: 1, unit: 'ft' }, depthMaximum: { value: 6, unit: 'in' } }, '/attributes/depthMaximum'],
    ['water that no dose is for', { kind: 'doser', doseFor: { value: 1000, unit: 'gal' } }, '/attributes/dosePerDay'],
    ['a species that is not known', { kind: 'fish', species: 'shark' }, '/attributes/species'],
    ['an attribute of another kind', { kind: 'liner', powerWatts: 5 }, '/attributes/powerWatts'],
    ['an unknown kind', { kind: 'submarine', depth: 3 }, '/attributes/kind'],
    ['no kind', { powerWatts: 3 }, '/attributes/kind'],
    ['a kind of the language', { kind: 'constructor' }, '/attributes/kind'],
    ['a list', [pump], '/attributes'],
    ['a text', 'pump', '/attributes'],
  ])('refuse %s', async (_what, attributes, pointer) => {
    const { status, body } = await company.owner.post('/v1/parts', part(attributes));
    expect([status, body.code, body.errors.map((error: { pointer: string }) => error.pointer)]).toEqual([400, 'invalid-input', [pointer]]);
  });

  it('refuse a list of an unknown kind', async () => {
    expect((await company.owner.get('/v1/parts?kind=submarine')).status).toBe(400);
  });
});
