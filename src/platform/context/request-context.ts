import { AsyncLocalStorage } from 'node:async_hooks';
import type { EntityManager } from 'typeorm';

/** What travels with a request besides its arguments: its id, and the transaction it is in. Nothing else belongs here. */
export interface RequestContext {
  readonly requestId: string | null;
  scope?: { readonly companyId: string; readonly manager: EntityManager; readonly writing: boolean };
}

export const requestContext = new AsyncLocalStorage<RequestContext>();
