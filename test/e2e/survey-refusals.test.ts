import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond } from '../support/test-pond.js';

const LENGTHS = 'in, ft, yd, mm, cm, m';
const ellipse = '{"shape": "ellipse", "length": {"value": 24, "unit": "ft"}, "width": {"value": 16, "unit": "ft"}}';
const reading = '{"toSediment": 18, "toBottom": 27}';
const readings = (list: string): string => `{"unit": "in", "readings": [${list}]}`;
const polygon = (points: string): string => `{"shape": "polygon", "unit": "ft", "points": ${points}}`;
const length = (quantity: string): string => `{"shape": "ellipse", "length": ${quantity}, "width": {"value": 16, "unit": "ft"}}`;

interface Wrong { readonly pointer: string; readonly detail: string }

describe('a survey that can\'t be right', () => {
  let test: TestApp;
  let company: TestCompany;
  let featureId: string;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    ({ featureId } = await makeTestPond(company));
  });
  afterAll(() => test.close());

  /** The body is sent as text: JSON.stringify would turn what is tested here, such as 1e400, into null. */
  const send = (body: string) =>
    test.http().post('/v1/surveys').set('authorization', `Bearer ${company.estimator.token}`).set('content-type', 'application/json').send(body);
  const body = (outline: string, probes = 'null', more = ''): string =>
    `{"featureId": "${featureId}", "surveyedOn": "2027-04-12", "outline": ${outline}, "probes": ${probes}${more}}`;
  const countSurveys = async () => (await test.sql<{ n: number }>('SELECT count(*)::int AS n FROM survey'))[0]?.n;

  it.each([
    ['a missing unit', length('{"value": 24}'), 'null', '/outline/length/unit', LENGTHS],
    ['a unit of the wrong kind', length('{"value": 24, "unit": "gal"}'), 'null', '/outline/length/unit', LENGTHS],
    ['a unit that is none', length('{"value": 24, "unit": "constructor"}'), 'null', '/outline/length/unit', LENGTHS],
    ['an area in a length unit', '{"shape": "measured", "area": {"value": 9, "unit": "ft"}, "perimeter": {"value": 64, "unit": "ft"}}', 'null', '/outline/area/unit', 'ft2, yd2, m2'],
    ['a number beyond all numbers', length('{"value": 1e400, "unit": "ft"}'), 'null', '/outline/length/value', 'finite'],
    ['a number in a string', length('{"value": "24", "unit": "ft"}'), 'null', '/outline/length/value', 'finite'],
    ['a negative length', length('{"value": -24, "unit": "ft"}'), 'null', '/outline/length/value', 'above 0'],
    ['a length of nothing', length('null'), 'null', '/outline/length', 'object'],
    ['an unknown field of the outline', length('{"value": 24, "unit": "ft", "about": true}'), 'null', '/outline/length/about', 'value, unit'],
    ['an unknown shape', '{"shape": "kidney"}', 'null', '/outline/shape', 'polygon'],
    ['an outline of null', 'null', 'null', '/outline', 'object'],
    ['a bow tie', polygon('[[0, 0], [10, 10], [10, 0], [0, 10]]'), 'null', '/outline/points/3', 'walking order'],
    ['a coordinate beyond all numbers', polygon('[[0, 0], [10, 0], [1e400, 5]]'), 'null', '/outline/points/2', 'finite'],
    ['two tapes that can\'t meet', '{"shape": "two-stake", "unit": "ft", "baseline": 30, "ranges": [[20, 20], [10, 10], [25, 25]]}', 'null', '/outline/ranges/1', 'measure them again'],
    ['an area that no such edge encloses', '{"shape": "measured", "area": {"value": 900, "unit": "ft2"}, "perimeter": {"value": 64, "unit": "ft"}}', 'null', '/outline/area', 'perimeter'],
    ['a negative depth', ellipse, readings('{"toSediment": -1, "toBottom": 27}'), '/probes/readings/0/toSediment', 'from 0'],
    ['a bottom above the sediment', ellipse, readings(`${reading}, ${reading}, ${reading}, {"toSediment": 27, "toBottom": 18}`), '/probes/readings/3/toBottom', 'swapped'],
    ['a depth beyond all numbers', ellipse, readings('{"toSediment": 1, "toBottom": 1e400}'), '/probes/readings/0/toBottom', 'finite'],
    ['a place of three coordinates', ellipse, readings('{"at": [1, 2, 3], "toSediment": 1, "toBottom": 2}'), '/probes/readings/0/at', 'pair'],
    ['a misspelt depth', ellipse, readings('{"toSediment": 18, "toBottom": 27, "toBotom": 3}'), '/probes/readings/0/toBotom', 'toBottom'],
    ['readings without a unit', ellipse, `{"readings": [${reading}]}`, '/probes/unit', LENGTHS],
    ['readings in gallons', ellipse, `{"unit": "gal", "readings": [${reading}]}`, '/probes/unit', LENGTHS],
    ['no readings in the probes', ellipse, readings(''), '/probes/readings', '5000'],
    ['5,001 readings', ellipse, readings(Array.from({ length: 5_001 }, () => reading).join()), '/probes/readings', '5000'],
  ])('refuses %s, and stores nothing', async (_name, outline, probes, pointer, advice) => {
    const before = await countSurveys();
    const answer = await send(body(outline, probes));
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-input']);
    expect(answer.body.errors.map((error: Wrong) => error.pointer)).toEqual([pointer]);
    expect(answer.body.errors[0].detail).toContain(advice);
    expect(await countSurveys()).toBe(before);
  });

  it('names everything that is wrong with outline and readings at once', async () => {
    const wrong = '{"toSediment": 3, "toBottom": 2}';
    const answer = await send(body(length('{"value": 0, "unit": "ft"}'), readings(`${wrong}, ${reading}, ${wrong}`)));
    expect(answer.body.errors.map((error: Wrong) => error.pointer)).toEqual(['/outline/length/value', '/probes/readings/0/toBottom', '/probes/readings/2/toBottom']);
  });

  it.each([
    ['an unknown field', ', "weather": "wet"', '/weather'],
    ['an access factor of 0.4', ', "accessFactor": "0.4"', '/accessFactor'],
    ['an access factor of five decimals', ', "accessFactor": "1.00001"', '/accessFactor'],
    ['an access factor as a number', ', "accessFactor": 1.15', '/accessFactor'],
    ['a hundred and one findings', `, "findings": ${JSON.stringify(Array(101).fill('Leak'))}`, '/findings'],
    ['a finding of 1,001 letters', `, "findings": ["Leak", "${'e'.repeat(1_001)}"]`, '/findings/1'],
    ['a day that does not exist', ', "surveyedOn": "2027-02-29"', '/surveyedOn'],
  ])('refuses %s', async (_name, more, pointer) => {
    const answer = await send(body(ellipse, 'null', more));
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-input']);
    expect(answer.body.errors.map((error: Wrong) => error.pointer)).toEqual([pointer]);
  });

  it.each([
    ['NaN, which is no JSON', () => body(length('{"value": NaN, "unit": "ft"}'))],
    ['a body cut short', () => body(ellipse).slice(0, -20)],
    ['a poisoned prototype', () => body(ellipse, 'null', ', "__proto__": {"role": "owner"}')],
    ['a poisoned prototype deep inside', () => body(ellipse, readings('{"toSediment": 1, "toBottom": 2, "__proto__": {"at": [0, 0]}}'))],
    ['nothing at all', () => ''],
  ])('refuses %s', async (_name, make) => {
    const answer = await send(make());
    expect(answer.status).toBe(400);
    expect(answer.headers['content-type']).toContain('application/problem+json');
  });

  it('refuses lists within lists within lists without running out of stack', async () => {
    const deep = '['.repeat(200_000) + ']'.repeat(200_000);
    for (const text of [body(deep), body(ellipse, deep), body(polygon(deep)), body(ellipse, readings(deep)), deep]) {
      const answer = await send(text);
      expect([answer.status, answer.body.code]).toEqual([400, 'invalid-input']);
    }
    const { body: made } = await send(body(ellipse));
    const patch = test.http().patch(`/v1/surveys/${made.id}`).set('authorization', `Bearer ${company.owner.token}`).set('if-match', '"1"');
    const answer = await patch.set('content-type', 'application/merge-patch+json').send(`{"outline": ${'{"a":'.repeat(200_000)}1${'}'.repeat(200_000)}}`);
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-input']);
  });

  it('refuses hundreds of thousands of lists side by side before it looks at each', async () => {
    const answer = await send(body(`[${Array.from({ length: 200_000 }, () => '[]').join()}]`));
    expect([answer.status, answer.body.errors[0].pointer]).toEqual([400, '']);
    expect(answer.body.errors[0].detail).toContain('100000');
  });

  it.each([['a million readings', 1_000_000 * reading.length], ['50 MB', 50 * 1024 * 1024]])('refuses %s before reading them', async (_name, size) => {
    const answer = await fetch(`${test.url}/v1/surveys`, {
      method: 'POST',
      headers: { authorization: `Bearer ${company.estimator.token}`, 'content-type': 'application/json' },
      body: Buffer.alloc(size, ' '),
    });
    expect(answer.status).toBe(413);
    expect((await answer.json() as { code: string }).code).toBe('body-too-large');
  });

  it('takes as many readings and points as there may be', async () => {
    const points = JSON.stringify(Array.from({ length: 2_000 }, (_, i) => [50 * Math.cos((i * Math.PI) / 1_000), 50 * Math.sin((i * Math.PI) / 1_000)]));
    const answer = await send(body(polygon(points), readings(Array.from({ length: 5_000 }, () => '{"at": [10, 10], "toSediment": 18, "toBottom": 27}').join())));
    expect(answer.status).toBe(201);
    const takeoff = await company.crew.get(`/v1/surveys/${answer.body.id}/takeoff`);
    expect(takeoff.status).toBe(200);
    expect(takeoff.body).toMatchObject({ sedimentMeanThickness: { value: 9, unit: 'in' }, warnings: [] });
  });
});
