import { createHash } from 'node:crypto';

/** SHA-256 of a request body with its keys in order, so that the same content sent twice has the same digest. */
export function requestDigest(body: unknown): Buffer {
  return createHash('sha256').update(canonical(body)).digest();
}

function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const entries = Object.entries(value)
      // A field left out, and a field given as null, mean the same.
      .filter(([, v]) => v !== undefined && v !== null)
      .sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${entries.map(([k, v]) => `${JSON.stringify(k)}:${canonical(v)}`).join(',')}}`;
  }
  return JSON.stringify(value) ?? 'null';
}
