import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { CALCULATION_EXAMPLES } from '../support/calculation-examples.js';

/** By name. */
const ABOUT_MONEY = ['liner-cut', 'pump-ranking', 'water-cost'];

describe('calculations', () => {
  let test: TestApp;
  let company: TestCompany;
  let list: { name: string; path: string; title: string; inputSchema: object; outputSchema: object }[];

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    list = ((await company.owner.get('/v1/calculations')).body as { items: typeof list }).items;
  });
  afterAll(() => test.close());

  it('are listed with schemas that are complete in themselves, and each has an example here', () => {
    expect(list.length).toBeGreaterThan(0);
    expect(list.map(({ name }) => name).sort()).toEqual(Object.keys(CALCULATION_EXAMPLES).sort());
    for (const { inputSchema, outputSchema } of list) for (const schema of [inputSchema, outputSchema]) expect(() => compile(schema)).not.toThrow();
  });

  it('answer a good example with what their output schema says, with working', async () => {
    for (const { name, path, inputSchema, outputSchema } of list) {
      const input = CALCULATION_EXAMPLES[name] ?? {};
      expect([name, compile(inputSchema)(input)]).toEqual([name, true]);
      const answer = await company.owner.post(path, input);
      expect([name, answer.status, answer.status === 200 ? '' : answer.text]).toEqual([name, 200, '']);
      expect([name, compile(outputSchema)(answer.body)]).toEqual([name, true]);
      expect((answer.body as { working: { steps: unknown[] } }).working.steps.length).toBeGreaterThan(0);
    }
  });

  it('refuse an unknown field, and each field of a wrong type, with the place', async () => {
    for (const { name, path } of list) {
      const input = CALCULATION_EXAMPLES[name] ?? {};
      const unknown = await company.owner.post(path, { ...input, unheardOf: 1 });
      expect([name, unknown.status, unknown.body.errors[0].pointer]).toEqual([name, 400, '/unheardOf']);
      for (const [field, value] of Object.entries(input)) {
        for (const wrong of [typeof value === 'string' ? 7 : 'seven', [[]]]) {
          const answer = await company.owner.post(path, { ...input, [field]: wrong });
          expect([name, field, answer.status]).toEqual([name, field, 400]);
          expect(answer.body.errors[0].pointer.startsWith(`/${field}`)).toBe(true);
        }
      }
    }
  });

  it('are for everybody, but for those that take or give a price', async () => {
    const refused: string[] = [];
    for (const { name, path } of list) {
      const { status } = await company.crew.post(path, CALCULATION_EXAMPLES[name] ?? {});
      if (status !== 200) refused.push(`${name}: ${status}`);
    }
    expect(refused.sort()).toEqual(ABOUT_MONEY.map((name) => `${name}: 403`));
    const theirs = ((await company.crew.get('/v1/calculations')).body as { items: { name: string }[] }).items.map(({ name }) => name);
    expect(list.map(({ name }) => name).filter((name) => !theirs.includes(name)).sort()).toEqual(ABOUT_MONEY);
  });

  function compile(schema: object): (value: unknown) => boolean {
    const ajv = new Ajv2020({ strict: false });
    (addFormats as unknown as (ajv: Ajv2020) => void)(ajv);
    return ajv.compile(schema) as (value: unknown) => boolean;
  }
});
