import type { OpenAPIObject } from '@nestjs/swagger';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import type { Response } from 'supertest';

interface Operation {
  readonly pattern: RegExp;
  readonly method: string;
  readonly responses: Record<string, { content?: Record<string, { schema: object }> }>;
}

const METHODS = ['get', 'post', 'patch', 'put', 'delete'];

/** Holds each answer of the service against its own OpenAPI document: status, media type and body. */
export class ContractCheck {
  private readonly operations: Operation[];
  private readonly ajv: Ajv2020;
  private readonly compiled = new Map<object, ValidateFunction>();

  constructor(document: OpenAPIObject) {
    this.ajv = new Ajv2020({ strict: false, allErrors: true });
    (addFormats as unknown as (ajv: Ajv2020) => void)(this.ajv);
    this.ajv.addSchema(document, 'contract');
    this.operations = Object.entries(document.paths).flatMap(([path, item]) =>
      METHODS.filter((method) => method in item).map((method) => ({
        method: method.toUpperCase(),
        pattern: new RegExp(`^${path.replace(/\{\w+\}/g, '[^/]+')}$`),
        responses: (item as Record<string, { responses: Operation['responses'] }>)[method]?.responses ?? {},
      })),
    );
  }

  /** @throws Error when the answer is none that the contract names; an address that it does not know may only be a 404 */
  verify(method: string, path: string, answer: Response): void {
    const where = `${method} ${path} → ${answer.status}`;
    const operation = this.operations.find((o) => o.method === method && o.pattern.test(path.split('?')[0] ?? ''));
    if (operation === undefined) {
      if (answer.status !== 404) throw new Error(`${where}: the contract has no such route`);
      return;
    }
    const documented = operation.responses[String(answer.status)];
    if (documented === undefined) throw new Error(`${where}: the contract names no such status; body: ${answer.text}`);
    if (documented.content === undefined) return;
    const type = (answer.headers['content-type'])?.split(';')[0] ?? '';
    const schema = documented.content[type]?.schema;
    if (schema === undefined) throw new Error(`${where}: the contract names no answer of type ${type}`);
    if (!type.includes('json')) return;
    const validate = this.validator(schema);
    if (!validate(answer.body)) throw new Error(`${where}: ${this.ajv.errorsText(validate.errors)}; body: ${answer.text.slice(0, 2000)}`);
  }

  private validator(schema: object): ValidateFunction {
    const there = this.compiled.get(schema);
    if (there !== undefined) return there;
    const absolute = JSON.parse(JSON.stringify(schema).replaceAll('"#/components', '"contract#/components')) as object;
    const made = this.ajv.compile(absolute);
    this.compiled.set(schema, made);
    return made;
  }
}
