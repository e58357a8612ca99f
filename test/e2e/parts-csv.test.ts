import fc from 'fast-check';
import type { Response } from 'supertest';
import { readTable, writeTable } from '../../src/features/catalog/csv/table.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { usd } from '../support/test-quote.js';

const gpm = (value: number) => ({ value, unit: 'gpm' });
const ft = (value: number) => ({ value, unit: 'ft' });
const PARTS = [
  { sku: 'PUMP', name: 'Pump, 2" outlet, "quiet"', unit: 'each', unitCost: usd('412.35'), markupPercent: '35', taxCategory: 'materials', attributes: { kind: 'pump', curve: [{ flow: gpm(0), head: ft(25) }, { flow: gpm(20.5), head: ft(23.6) }], powerWatts: 320 } },
  { sku: 'LINER', name: '=HYPERLINK("http://example.com")', unit: 'ft2', unitCost: usd('0.87'), markupPercent: '40.5', packSize: '0.5', attributes: { kind: 'liner', rollWidth: ft(30), rollLength: { value: 30.5, unit: 'm' } } },
  { sku: 'FILTER', name: '\'-quoted, and signed', unit: 'each', unitCost: usd('300.00'), markupPercent: '0', attributes: { kind: 'filter', surfaceArea: { value: 400, unit: 'ft2' }, flowMinimum: gpm(5), flowMaximum: gpm(50) } },
  { sku: 'DOSER', name: '@doser', unit: 'each', unitCost: usd('120.00'), markupPercent: '20', active: false, attributes: { kind: 'doser', reservoirVolume: { value: 1, unit: 'gal' }, dosePerDay: { value: 1e-7, unit: 'm3' } } },
  { sku: 'GRAVEL', name: '+Kies, gewaschen – süß', unit: 'ton', unitCost: usd('45.00'), markupPercent: '20', attributes: { kind: 'gravel', bulkDensityKgPerM3: 1500, voidFraction: 0.4 } },
  { sku: 'PIPE', name: 'Pipe, 10 ft', unit: 'each', unitCost: usd('9.00'), markupPercent: '20', attributes: { kind: 'pipe', innerDiameter: { value: 2.067, unit: 'in' }, pieceLength: ft(10) } },
  { sku: 'ELBOW', name: 'Elbow', unit: 'each', unitCost: usd('2.00'), markupPercent: '20', attributes: { kind: 'fitting', fittingKind: 'elbow-90', innerDiameter: { value: 2.067, unit: 'in' } } },
  { sku: 'SKIMMER', name: 'Skimmer', unit: 'each', unitCost: usd('200.00'), markupPercent: '20', attributes: { kind: 'skimmer', flowMaximum: gpm(50), headLoss: { value: 6, unit: 'in' }, headLossFlow: gpm(40) } },
  { sku: 'SPILLWAY', name: 'Spillway', unit: 'each', unitCost: usd('90.00'), markupPercent: '20', attributes: { kind: 'spillway', lipWidth: { value: 24, unit: 'in' }, flowMinimum: gpm(20) } },
  { sku: 'DOSER-2', name: 'Doser', unit: 'each', unitCost: usd('120.00'), markupPercent: '20', attributes: { kind: 'doser', reservoirVolume: { value: 1, unit: 'gal' }, dosePerDay: { value: 2, unit: 'L' }, doseFor: { value: 1000, unit: 'gal' }, settingStep: { value: 250, unit: 'gal' } } },
  { sku: 'RUSH', name: 'Rush', unit: 'each', unitCost: usd('8.00'), markupPercent: '20', attributes: { kind: 'plant', coverArea: { value: 2, unit: 'ft2' }, depthMinimum: { value: 0, unit: 'in' }, depthMaximum: { value: 6, unit: 'in' } } },
  { sku: 'FISH', name: 'Fish', unit: 'each', unitCost: usd('8.00'), markupPercent: '20', attributes: { kind: 'fish', species: 'goldfish', grownMass: { value: 0.5, unit: 'lb' } } },
  { sku: 'PLAIN', name: '-5 percent', unit: 'each', unitCost: usd('1.00'), markupPercent: '20' },
];

describe('parts as a table', () => {
  let test: TestApp;
  let company: TestCompany;
  let owner: Client;

  beforeAll(async () => {
    test = await startTestApp();
  });
  beforeEach(async () => {
    company = await makeTestCompany(test);
    owner = company.owner;
  });
  afterAll(() => test.close());

  const send = (person: Client, csv: string | Buffer, type = 'text/csv'): Promise<Response> =>
    test.request('post', '/v1/parts/import').set('authorization', `Bearer ${person.token}`).set('content-type', type).send(csv).then((answer) => answer);
  const exported = async (): Promise<string> => (await owner.get('/v1/parts/export')).text;
  const all = async () => (await owner.get('/v1/parts?limit=200')).body.items;
  const outcomes = ({ body }: Response) => body.rows.map(({ row, outcome, errors }: { row: number; outcome: string; errors: { pointer: string }[] }) => [row, outcome, ...errors.map(({ pointer }) => pointer)]);

  it('change nothing when what was exported is imported, whatever stands in them', async () => {
    for (const part of PARTS) expect((await owner.post('/v1/parts', part)).status).toBe(201);
    const before = await all();
    const csv = await exported();
    for (const table of [csv, `\ufeff${csv}`, csv.replaceAll('\r\n', '\n'), csv.replace('\r\n', '\n'), csv.replace(/\r\n(?=.)/g, '\n'), csv.replace(',true,', ',TRUE,')]) {
      const { status, body } = await send(company.estimator, table, 'text/csv; charset=utf-8');
      expect([status, body]).toEqual([200, expect.objectContaining({ made: 0, changed: 0, unchanged: PARTS.length, refused: 0 })]);
    }
    expect(await all()).toEqual(before);
    expect(await exported()).toBe(csv);
  });

  it('make the same catalog in another company', async () => {
    for (const part of PARTS) await owner.post('/v1/parts', part);
    const csv = await exported();
    const other = await makeTestCompany(test);
    expect((await send(other.owner, csv)).body).toMatchObject({ made: PARTS.length, refused: 0 });
    expect((await other.owner.get('/v1/parts/export')).text).toBe(csv);
    await send(other.owner, 'sku,name\nLINER,Renamed');
    expect(await exported()).toBe(csv);
    const [pump] = (await other.owner.get('/v1/parts?sku=PUMP')).body.items;
    expect(pump).toMatchObject({ ...PARTS[0], packSize: '1', active: true });
    expect((await other.owner.get(`/v1/parts/${pump.id}/costs`)).body.items).toEqual([expect.objectContaining({ unitCost: usd('412.35'), recordedBy: other.owner.personId })]);
  });

  it('are exported by stock number as RFC 4180 has it, and no cell is a formula', async () => {
    for (const part of PARTS) await owner.post('/v1/parts', part);
    const answer = await owner.get('/v1/parts/export');
    expect([answer.status, answer.headers['content-type'], answer.headers['content-disposition']]).toEqual([200, 'text/csv; charset=utf-8; header=present', 'attachment; filename="parts.csv"']);
    const lines = answer.text.split('\r\n');
    expect(lines[0]).toMatch(/^sku,name,unit,unitCost,currency,/);
    expect(lines.map((line) => line.split(',')[0])).toEqual(['sku', ...PARTS.map(({ sku }) => sku).sort(), '']);
    expect(lines.find((line) => line.startsWith('LINER,'))).toContain('"\'=HYPERLINK(""http://example.com"")"');
    expect(lines.find((line) => line.startsWith('PUMP,'))).toContain('0 gpm @ 25 ft; 20.5 gpm @ 23.6 ft');
    expect(answer.text).not.toMatch(/(^|[,\n])"?[=+\-@]/);
  });

  it('give the columns to fill in when there is no part yet, and read them back filled', async () => {
    const header = (await exported()).trimEnd();
    const columns = header.split(',');
    const row = (cells: Record<string, string>): string => columns.map((name) => cells[name] ?? '').join(',');
    const part = { unit: 'each', unitCost: '5.00', currency: 'USD', markupPercent: '20' };
    const answer = await send(owner, [
      header,
      row({ ...part, sku: 'LILY', name: 'Lily', kind: 'plant', coverArea: '6 ft2', depthMinimum: '12 in', depthMaximum: '24 in' }),
      row({ ...part, sku: 'TEE', name: 'Tee', kind: 'fitting', fittingKind: 'tee-branch', innerDiameter: '2.067 in' }),
      row({ ...part, sku: 'SKIM', name: 'Skimmer', kind: 'skimmer', headLoss: '6 in' }),
      row({ ...part, sku: 'LIP', name: 'Spillway', kind: 'spillway', lipWidth: '24 gal' }),
      row({ ...part, sku: 'EEL', name: 'Eel', kind: 'fish', species: 'eel' }),
    ].join('\r\n'));
    expect(outcomes(answer)).toEqual([[2, 'made'], [3, 'made'], [4, 'refused', '/headLossFlow'], [5, 'refused', '/lipWidth'], [6, 'refused', '/species']]);
    const [lily] = (await owner.get('/v1/parts?sku=LILY')).body.items;
    expect(lily.attributes).toEqual({ kind: 'plant', coverArea: { value: 6, unit: 'ft2' }, depthMinimum: { value: 12, unit: 'in' }, depthMaximum: { value: 24, unit: 'in' } });
  });

  it('take the good rows beside the bad ones, and say of each what became of it', async () => {
    await owner.post('/v1/parts', { sku: 'OLD', name: 'Old', unit: 'each', unitCost: usd('5.00'), markupPercent: '20' });
    await owner.post('/v1/parts', { sku: 'SAME', name: 'Same', unit: 'each', unitCost: usd('5.00'), markupPercent: '20' });
    const answer = await send(owner, [
      'sku,name,unit,unitCost,markupPercent,kind,curve,rollWidth',
      'OLD,New name,each,6.00,20,,,',
      'SAME,Same,each,5.00,20.0,,,',
      'P1,Pump,each,10.00,20,pump,0 gpm @ 25 ft; 20 gpm @ 26 ft,',
      'P2,Pump,each,10.00,20,pump,0 gpm @ 25 ft; 20 gpm,',
      'L1,Liner 3/4" thick,ft2,1.00,20,liner,,30 gal',
      'L2,Liner,ft2,abc,20,liner,,30 ft',
      'L3,Liner,ft2,1.00,20,submarine,,',
      'L4,Liner,ft2,1.00,20,,,30 ft',
      '😀,Liner,ft2,1.00,20,,,',
      'OLD,Twice,each,6.00,20,,,',
      '',
      ',No number,each,6.00,20,,,',
      'L5,Too few,each,6.00',
      'L6,Liner 3/4" thick,ft2,1.00,20,liner,,30 ft',
    ].join('\n'));
    expect(answer.status).toBe(200);
    expect(outcomes(answer)).toEqual([
      [2, 'changed'],
      [3, 'unchanged'],
      [4, 'refused', '/curve/1/head'],
      [5, 'refused', '/curve/1'],
      [6, 'refused', '/rollWidth'],
      [7, 'refused', '/unitCost'],
      [8, 'refused', '/kind'],
      [9, 'refused', '/kind'],
      [10, 'refused', '/sku'],
      [11, 'refused', '/sku'],
      [13, 'refused', '/sku'],
      [14, 'refused', ''],
      [15, 'made'],
    ]);
    expect(answer.body).toMatchObject({ made: 1, changed: 1, unchanged: 1, refused: 10 });
    expect((await all()).map(({ sku, name }: { sku: string; name: string }) => [sku, name])).toEqual([['L6', 'Liner 3/4" thick'], ['SAME', 'Same'], ['OLD', 'New name']]);
  });

  it('keep what the table has no column for, take away what an empty cell stands for, and note a new cost', async () => {
    const { body } = await owner.post('/v1/parts', PARTS[0] ?? {});
    const path = `/v1/parts/${body.id}`;
    expect(outcomes(await send(owner, 'sku,unitCost\nPUMP,420.00'))).toEqual([[2, 'changed']]);
    expect((await owner.get(path)).body).toEqual({ ...body, unitCost: usd('420.00') });
    expect((await owner.get(path)).headers['etag']).toBe('"2"');
    expect((await owner.get(`${path}/costs`)).body.items).toHaveLength(2);
    await send(owner, 'sku,powerWatts,taxCategory\nPUMP,,');
    expect((await owner.get(path)).body).toMatchObject({ taxCategory: null, attributes: { kind: 'pump', curve: body.attributes.curve } });
    await send(owner, 'sku,kind,innerDiameter\nPUMP,pipe,2 in');
    expect((await owner.get(path)).body.attributes).toEqual({ kind: 'pipe', innerDiameter: { value: 2, unit: 'in' } });
    expect((await owner.get(`${path}/costs`)).body.items).toHaveLength(2);
    expect(outcomes(await send(owner, 'sku,unitCost,currency,taxCategory\nPUMP,1.00,EUR,\nNEW,1.00,USD,luxury'))).toEqual([[2, 'refused', '/currency'], [3, 'refused', '/name', '/unit', '/markupPercent']]);
    expect(outcomes(await send(owner, 'sku,taxCategory\nPUMP,luxury'))).toEqual([[2, 'refused', '/taxCategory']]);
  });

  it.each([
    ['nothing', '\n', ''],
    ['an unknown column', 'sku,colour\nA,red', '/header/1'],
    ['semicolons', 'sku;name\nA;B', '/header/0'],
    ['a column twice', 'sku,name,name\nA,B,C', '/header/2'],
    ['no stock numbers', 'name\nA', '/header'],
    ['a quote that is never closed', 'sku,name\nA,"B\nC,D', ''],
    ['bytes that are no UTF-8', Buffer.from([0x73, 0x6b, 0x75, 0x0a, 0xff, 0xfe]), ''],
    ['more rows than it takes at once', `sku\n${'A\n'.repeat(10_001)}`, ''],
  ])('refuse a table of %s', async (_what, csv, pointer) => {
    const { status, body } = await send(owner, csv);
    expect([status, body.code, body.errors[0]?.pointer]).toEqual([400, 'invalid-input', pointer]);
    expect(await all()).toEqual([]);
  });

  it('refuse another type of body, and other routes refuse a table', async () => {
    const json = await owner.post('/v1/parts/import', { sku: 'A' });
    const elsewhere = await test.request('post', '/v1/parts').set('authorization', `Bearer ${owner.token}`).set('content-type', 'text/csv').send('sku\nA');
    const large = await send(owner, `sku\n${'A'.repeat(2 * 1024 * 1024)}`);
    expect([json.status, elsewhere.status, large.status]).toEqual([415, 415, 413]);
  });

  it('leave a part alone that somebody else changed or entered while the table was read', async () => {
    const csv = ['sku,name,unit,unitCost,markupPercent', ...Array.from({ length: 300 }, (_, i) => `S-${i},Part,each,1.00,20`)].join('\n');
    const answers = await Promise.all([send(owner, csv), send(company.estimator, csv)]);
    const made = answers.map(({ body }) => body.made as number);
    expect([...answers.map(({ status }) => status), made.reduce((a, b) => a + b)]).toEqual([200, 200, 300]);
    expect((await test.sql<{ n: string }>('SELECT count(*) AS n FROM part WHERE company_id = $1', [company.id]))[0]?.n).toBe('300');
  });

  it('are closed to the crew', async () => {
    for (const person of [company.crewLead, company.crew]) {
      expect((await person.get('/v1/parts/export')).status).toBe(403);
      expect((await send(person, 'sku\nA')).status).toBe(403);
    }
  });
});

describe('a table', () => {
  const cell = fc.oneof(fc.string({ unit: 'grapheme' }), fc.stringMatching(/^'{0,3}[=+@-].{0,5}$/), fc.constantFrom('"', 'a,b', 'a\r\nb', "'", "'=", '\t=1', '＝1'));
  const row = fc.array(cell, { minLength: 3, maxLength: 3 }).filter((cells) => cells.some((one) => one.trim() !== ''));

  it('reads back what it wrote, cell by cell', () => {
    fc.assert(
      fc.property(fc.array(row, { maxLength: 5 }), (rows) => {
        expect(readTable(writeTable(['a', 'b', 'c'], rows)).rows.map(({ cells }) => cells)).toEqual(rows);
      }),
    );
  });

  it('has no cell that begins as a formula does', () => {
    fc.assert(
      fc.property(cell, (one) => {
        expect(writeTable(['a'], [[one]]).slice('a\r\n'.length, -'\r\n'.length)).not.toMatch(/^"?[=+\-@\t\r＝＋－＠]/);
      }),
    );
  });
});
