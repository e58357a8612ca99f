/** What a failed statement says of itself: SQLSTATE and the constraint's name. */
export interface DatabaseFailure {
  readonly code: string;
  readonly constraint: string | null;
  readonly table: string | null;
}

/** Reads SQLSTATE and constraint of a driver error, wrapped by TypeORM or not; null for anything else. */
export function databaseFailure(error: unknown): DatabaseFailure | null {
  for (let current = error; typeof current === 'object' && current !== null; ) {
    const e = current as { code?: unknown; constraint?: unknown; table?: unknown; driverError?: unknown };
    if (typeof e.code === 'string' && /^[0-9A-Z]{5}$/.test(e.code)) {
      return {
        code: e.code,
        constraint: typeof e.constraint === 'string' ? e.constraint : null,
        table: typeof e.table === 'string' ? e.table : null,
      };
    }
    current = e.driverError;
  }
  return null;
}

/**
 * Serialization failure, deadlock, and a primary key taken by a create that ran at the same time: the transaction did
 * nothing, and run again as a whole it will see what the other one did.
 */
export function isRetryable(error: unknown): boolean {
  const failure = databaseFailure(error);
  if (failure === null) return false;
  return ['40001', '40P01'].includes(failure.code) || (failure.code === '23505' && failure.constraint?.startsWith('pk_') === true);
}

/** The database is away or going away; nothing was committed that was acknowledged. */
export function isUnavailable(error: unknown): boolean {
  const code = databaseFailure(error)?.code ?? '';
  if (code.startsWith('08') || code.startsWith('57P') || code === '53300') return true;
  const e = error as { code?: unknown; message?: unknown; driverError?: unknown } | null;
  const system = typeof e?.code === 'string' ? e.code : '';
  const message = typeof e?.message === 'string' ? e.message : '';
  if (['ECONNREFUSED', 'ECONNRESET', 'EPIPE', 'ETIMEDOUT', 'ENOENT'].includes(system)) return true;
  // A query runner gives its connection up when that is lost; what its transaction still wanted to do then fails.
  return /already released|Connection terminated|timeout exceeded when trying to connect|Client has encountered a connection error|not queryable|Cannot use a pool after calling end/i.test(message);
}
