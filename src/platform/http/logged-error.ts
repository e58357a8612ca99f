import { databaseFailure } from '../database/database-errors.js';

const LONGEST = 500;

/** A failure as logs may keep it. */
export type LoggedError = {
  readonly type: string;
  readonly message: string;
  readonly stack: string;
  /** SQLSTATE, or what the system calls it. */
  readonly code: string | null;
  readonly constraint: string | null;
  /** Its places hold $1, $2 … and no values. */
  readonly query: string | null;
};

/**
 * A failed statement carries its values with it: addresses, wages, hashes of passwords and of codes, a quarter of a
 * megabyte of somebody's photo. What is not named here stays out of the log, so that a restart of the database does
 * not write them down. The driver's `detail` stays out too: it quotes the row.
 */
export function loggedError(error: unknown): LoggedError {
  if (!(error instanceof Error)) return { type: typeof error, message: 'something was thrown that is no error', stack: '', code: null, constraint: null, query: null };
  const { code, query } = error as { code?: unknown; query?: unknown };
  const failure = databaseFailure(error);
  return {
    type: error.constructor.name,
    message: error.message.slice(0, LONGEST),
    stack: error.stack?.replace(error.message, '…') ?? '',
    code: failure?.code ?? (typeof code === 'string' ? code : null),
    constraint: failure?.constraint ?? null,
    query: typeof query === 'string' ? query.slice(0, LONGEST) : null,
  };
}
