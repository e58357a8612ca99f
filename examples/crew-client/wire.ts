import type { ProblemDetails } from './contract.js';

export interface WireRequest {
  readonly method: 'GET' | 'HEAD' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: string | Uint8Array<ArrayBuffer>;
}

export interface WireAnswer {
  readonly status: number;
  readonly headers: { get(name: string): string | null };
  readonly text: string;
}

/** Carries one request. Whatever it throws means: nobody knows whether the request arrived. */
export type Wire = (request: WireRequest) => Promise<WireAnswer>;

/** No answer, or only a part of one. The request may have been carried out all the same. */
export class NoAnswer extends Error {}

/** The service answered, and did not do it. */
export class Refused extends Error {
  constructor(
    readonly status: number,
    readonly problem: ProblemDetails,
    /** Seconds that the service asked to wait; null when it did not say. */
    readonly retryAfter: number | null,
  ) {
    super(`${status} ${problem.code}: ${problem.detail}`);
  }

  /** Whether the same request may do better later. */
  get passing(): boolean {
    return this.status >= 500 || this.status === 429 || this.status === 408;
  }
}

/** The network of the phone. @param patience milliseconds to wait for a whole answer */
export function networkWire(url: string, patience = 30_000): Wire {
  return async ({ method, path, headers, body }) => {
    const answer = await fetch(url + path, { method, headers, ...(body === undefined ? {} : { body }), signal: AbortSignal.timeout(patience) });
    // The body belongs to the answer: a connection that breaks in the middle of it must count as no answer at all.
    return { status: answer.status, headers: answer.headers, text: await answer.text() };
  };
}

/** Sends a request. @throws NoAnswer or Refused */
export async function carry(wire: Wire, request: WireRequest): Promise<WireAnswer> {
  const answer = await wire(request).catch((error: unknown) => {
    throw new NoAnswer(`${request.method} ${request.path}: no answer`, { cause: error });
  });
  if (answer.status < 400) return answer;
  const problem = { status: answer.status, code: 'unknown', detail: '', ...(parsed(answer.text) as object | undefined) };
  throw new Refused(answer.status, problem, seconds(answer.headers.get('retry-after')));
}

/** Sends a request and reads the answer. @throws NoAnswer or Refused */
export async function exchange<T>(wire: Wire, method: WireRequest['method'], path: string, body?: object, token?: string): Promise<T> {
  const headers = { accept: 'application/json', ...(body === undefined ? {} : { 'content-type': 'application/json' }), ...(token === undefined ? {} : { authorization: `Bearer ${token}` }) };
  const answer = await carry(wire, { method, path, headers, ...(body === undefined ? {} : { body: JSON.stringify(body) }) });
  const read = parsed(answer.text);
  // Half a page is well-formed nowhere: better to ask for it again than to guess what it said.
  if (read === undefined && answer.status !== 204) throw new NoAnswer(`${method} ${path}: the answer was cut off`);
  return read as T;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function seconds(text: string | null): number | null {
  return text !== null && /^\d+$/.test(text) ? Number(text) : null;
}
