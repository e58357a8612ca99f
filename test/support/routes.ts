import type { OpenAPIObject } from '@nestjs/swagger';

export interface Route {
  readonly method: 'get' | 'post' | 'patch' | 'delete';
  /** As in the contract: /v1/quotes/{id}/issue */
  readonly path: string;
}

/** Every route of the contract that takes a token. */
export function signedInRoutes(document: OpenAPIObject): Route[] {
  return Object.entries(document.paths).flatMap(([path, item]) =>
    (['get', 'post', 'patch', 'delete'] as const)
      .filter((method) => (item as Record<string, { security?: unknown[] } | undefined>)[method]?.security !== undefined)
      .map((method) => ({ method, path })),
  );
}

/** The name of the things that a path is about: /v1/quotes/{id}/issue → quotes. */
export function thingOf(path: string): string {
  return path.split('/')[2] ?? '';
}

export function fill(path: string, ids: Readonly<Record<string, string>>): string {
  return path.replace('{id}', ids[thingOf(path)] ?? '').replace('{revision}', '1');
}
