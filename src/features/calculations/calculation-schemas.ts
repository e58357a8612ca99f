import type { OpenAPIObject } from '@nestjs/swagger';

type Json = Record<string, unknown>;

/** The input and output schemas of a calculation, with what they refer to, so that a client needs nothing else. */
export function schemasOf(document: OpenAPIObject, name: string): { inputSchema: object; outputSchema: object } {
  const operation = (document.paths[`/v1/calculations/${name}`] as Json)['post'] as { requestBody: Json; responses: Record<string, Json> };
  const shared = (document.components?.schemas ?? {}) as Record<string, Json>;
  const schemaOf = (part: Json | undefined): Json => ((part?.['content'] as Json)['application/json'] as Json)['schema'] as Json;
  return { inputSchema: alone(schemaOf(operation.requestBody), shared), outputSchema: alone(schemaOf(operation.responses['200']), shared) };
}

/** A schema whose references lead into itself. */
function alone(schema: Json, shared: Record<string, Json>): object {
  const definitions: Record<string, unknown> = {};
  const visit = (node: unknown): unknown => {
    if (Array.isArray(node)) return node.map(visit);
    if (typeof node !== 'object' || node === null) return node;
    return Object.fromEntries(Object.entries(node).map(([key, value]) => [key, key === '$ref' ? refer(String(value)) : visit(value)]));
  };
  const refer = (reference: string): string => {
    const name = reference.split('/').at(-1) ?? '';
    if (!(name in definitions)) {
      definitions[name] = null;
      definitions[name] = visit(shared[name]);
    }
    return `#/$defs/${name}`;
  };
  const root = visit(schema) as Json;
  return { $schema: 'https://json-schema.org/draft/2020-12/schema', ...root, $defs: definitions };
}
