import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, type OpenAPIObject, SwaggerModule } from '@nestjs/swagger';

type Json = Record<string, unknown>;

const ABOUT = `The backend of a contractor who renovates ponds and water features: survey, takeoff, quote, job, hours, invoice, profit.

- **Quantities** carry their unit: \`{"value": 96, "unit": "ft"}\`. **Money** carries its currency: \`{"amount": "1234.50", "currency": "USD"}\`. Rates, hours and factors that enter a price are decimal strings. Days are YYYY-MM-DD, instants RFC 3339 with an offset.
- **Every create may be repeated**: choose the \`id\` yourself; the same id and body answer 200 with the first result, the same id with another body 409. Changes of state may be repeated too.
- **No change is lost**: a resource has an \`ETag\`; a PATCH (JSON merge patch, RFC 7396) needs it in \`If-Match\`: 428 without, 412 when it is out of date.
- **Lists** take \`limit\` (at most 200) and \`cursor\`.
- **Errors** are problem details (RFC 9457) with a \`code\`, and in \`errors\` the place in the request and what to do.
- A thing of another company and a thing that is not there answer alike: 404.
- Crew roles never receive a cost, a price, a wage or a margin: the fields are missing from their answers.`;

/** The contract as OpenAPI 3.1, in a stable order, so that the committed copy can be compared byte for byte. */
export function openApiDocument(app: INestApplication): OpenAPIObject {
  const config = new DocumentBuilder()
    .setTitle('Rillbook')
    .setDescription(ABOUT)
    .setVersion('1')
    .setLicense('MIT', 'https://spdx.org/licenses/MIT.html')
    .addServer('/', 'This service')
    .addBearerAuth({ type: 'http', scheme: 'bearer', bearerFormat: 'JWT' })
    .setOpenAPIVersion('3.1.0')
    .build();
  const document = SwaggerModule.createDocument(app, config, {
    operationIdFactory: (controller, method) => `${controller.replace(/Controller$/, '').replace(/^./, (c) => c.toLowerCase())}_${method}`,
    autoTagControllers: true,
  });
  addPatchSchemas(document as unknown as Json);
  return modernize(document) as OpenAPIObject;
}

/** The schema of a merge patch: every field of the create body, none required, each may be null. */
function addPatchSchemas(document: Json): void {
  const schemas = (document['components'] as { schemas: Record<string, Json> }).schemas;
  for (const path of Object.values(document['paths'] as Record<string, Record<string, Json>>)) {
    const operation = path['patch'];
    const name = operation?.['x-patch-of'] as string | undefined;
    if (operation === undefined || name === undefined) continue;
    delete operation['x-patch-of'];
    const properties = { ...(schemas[name]?.['properties'] as Record<string, Json>) };
    delete properties['id'];
    schemas[`${name}Patch`] = { type: 'object', additionalProperties: false, properties: Object.fromEntries(Object.entries(properties).map(([field, schema]) => [field, { ...schema, nullable: true }])) };
  }
}

/** OpenAPI 3.1 has no `nullable`: null is a type of its own. Object schemas of ours are closed. */
function modernize(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(modernize);
  if (typeof node !== 'object' || node === null) return node;
  const { nullable, ...rest } = node as Json;
  const result: Json = {};
  for (const [key, value] of Object.entries(rest)) result[key] = key === 'example' || key === 'default' ? value : modernize(value);
  if (result['type'] === 'object' && result['properties'] !== undefined && result['additionalProperties'] === undefined) result['additionalProperties'] = false;
  if (nullable !== true) return result;
  const types = [result['type']].flat().filter((type) => typeof type === 'string');
  if (types.length > 0) {
    return { ...result, type: [...new Set([...types, 'null'])], ...(Array.isArray(result['enum']) ? { enum: [...new Set([...(result['enum'] as unknown[]), null])] } : {}) };
  }
  const { description, ...schema } = result;
  const inner = Array.isArray(schema['allOf']) && schema['allOf'].length === 1 ? (schema['allOf'] as Json[])[0] : schema;
  return { ...(description === undefined ? {} : { description }), anyOf: [inner, { type: 'null' }] };
}
