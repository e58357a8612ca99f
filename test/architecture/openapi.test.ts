import { readFile } from 'node:fs/promises';
import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { contract } from '../../src/contract.js';

interface Schema {
  readonly type?: string | string[];
  readonly description?: string;
  readonly properties?: Record<string, Schema>;
  readonly example?: unknown;
  readonly $ref?: string;
  readonly anyOf?: Schema[];
}

interface Operation {
  readonly summary?: string;
  readonly security?: object[];
  readonly parameters?: { name: string; description?: string; schema?: Schema }[];
  readonly requestBody?: { content: Record<string, { schema: Schema }> };
  readonly responses: Record<string, { description?: string; content?: Record<string, unknown> }>;
}

describe('openapi.json', () => {
  let text: string;
  let document: { openapi: string; paths: Record<string, Record<string, Operation>>; components: { schemas: Record<string, Schema> } };
  let operations: { name: string; operation: Operation }[];

  beforeAll(async () => {
    text = await contract();
    document = JSON.parse(text) as typeof document;
    operations = Object.entries(document.paths).flatMap(([path, item]) => Object.entries(item).map(([method, operation]) => ({ name: `${method.toUpperCase()} ${path}`, operation })));
  });

  it('is committed as the code makes it (npm run openapi writes it)', async () => {
    expect(await readFile(new URL('../../openapi.json', import.meta.url), 'utf8')).toBe(text);
  });

  it('is OpenAPI 3.1, whose schemas all compile and whose references all lead somewhere', () => {
    expect(document.openapi).toBe('3.1.0');
    expect(text).not.toContain('"nullable"');
    const ajv = withContract();
    for (const name of Object.keys(document.components.schemas)) expect(ajv.getSchema(`contract#/components/schemas/${name}`)).toBeDefined();
  });

  it('describes every operation, parameter and field', () => {
    const bare: string[] = [];
    for (const { name, operation } of operations) {
      if (!operation.summary) bare.push(name);
      for (const parameter of operation.parameters ?? []) if (!parameter.description) bare.push(`${name} ${parameter.name}`);
      for (const [status, response] of Object.entries(operation.responses)) if (!response.description) bare.push(`${name} ${status}`);
    }
    for (const [name, schema] of Object.entries(document.components.schemas)) {
      for (const [field, property] of Object.entries(schema.properties ?? {})) {
        if (!name.endsWith('Patch') && !property.description && !('allOf' in property)) bare.push(`${name}.${field}`);
      }
    }
    expect(bare).toEqual([]);
  });

  it('names the unit or the currency of every number and decimal', () => {
    const silent: string[] = [];
    const unitless = /count|phase|number of|how many|seconds|days|minutes|hours|percent|year|position|revision|status|most items|factor|amount as a decimal|the number, in the unit|currency|unit named|version|pack|quantity|kind of|rounded up|rate|\b(ft|in|yd|gal|lb|m)\b/i;
    for (const [name, schema] of Object.entries(document.components.schemas)) {
      for (const [field, property] of Object.entries(schema.properties ?? {})) {
        const types = [property.type].flat();
        if (types.some((type) => type === 'number' || type === 'integer') && !unitless.test(property.description ?? '')) silent.push(`${name}.${field}: ${property.description ?? ''}`);
      }
    }
    expect(silent).toEqual([]);
  });

  it('lists the errors of every operation, as problem details', () => {
    const poor = operations.filter(({ operation }) => {
      const errors = Object.entries(operation.responses).filter(([status]) => Number(status) >= 400);
      const ofProblems = errors.every(([, response]) => response.content !== undefined && 'application/problem+json' in response.content);
      const needed = operation.security === undefined ? ['500'] : ['401', '403', '500'];
      return !ofProblems || needed.some((status) => !(status in operation.responses));
    });
    expect(poor.map(({ name }) => name)).toEqual([]);
  });

  it('names the header of every answer that says that nothing changed', () => {
    const silent = operations.filter(({ operation }) => '304' in operation.responses && !operation.parameters?.some(({ name }) => name === 'If-None-Match'));
    expect(silent.map(({ name }) => name)).toEqual([]);
  });

  it('names the units of api.md in every quantity', () => {
    const unit = document.components.schemas['Quantity']?.properties?.['unit'] as { enum?: string[] } | undefined;
    expect(unit?.enum).toEqual(expect.arrayContaining(['in', 'ft', 'yd', 'mm', 'cm', 'm', 'ft2', 'yd2', 'm2', 'ft3', 'yd3', 'm3', 'gal', 'L', 'gpm', 'gph', 'L/min', 'm3/h', 'lb', 'ton', 'kg', 't', 'h', 'each']));
  });

  it('gives only examples that meet their schema', () => {
    const ajv = withContract();
    const wrong: string[] = [];
    let seen = 0;
    for (const [name, schema] of Object.entries(document.components.schemas)) {
      for (const [field, property] of Object.entries(schema.properties ?? {})) {
        if (property.example === undefined) continue;
        seen++;
        const validate = ajv.getSchema(`contract#/components/schemas/${name}/properties/${field}`);
        if (validate === undefined || validate(property.example) !== true) wrong.push(`${name}.${field}: ${JSON.stringify(property.example)}`);
      }
    }
    expect(seen).toBeGreaterThan(30);
    expect(wrong).toEqual([]);
  });

  it('shows for each quantity of a request one that the field takes', () => {
    const wrong: string[] = [];
    let seen = 0;
    for (const [name, { properties }] of Object.entries(document.components.schemas)) {
      for (const [field, { description, example }] of Object.entries(properties ?? {})) {
        const units = / Units: ([^.]+)\.$/.exec(description ?? '')?.[1]?.split(', ');
        if (units === undefined) continue;
        seen++;
        if (!units.includes((example as { unit: string } | undefined)?.unit ?? '')) wrong.push(`${name}.${field}: ${JSON.stringify(example)}`);
      }
    }
    expect(seen).toBeGreaterThan(100);
    expect(wrong).toEqual([]);
  });

  function withContract(): Ajv2020 {
    const ajv = new Ajv2020({ strict: false });
    (addFormats as unknown as (ajv: Ajv2020) => void)(ajv);
    ajv.addSchema(JSON.parse(text) as object, 'contract');
    return ajv;
  }
});
