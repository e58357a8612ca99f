/** One thing wrong with a value: where (RFC 6901, relative to the value passed in), and what to do about it. */
export interface Violation {
  readonly pointer: string;
  readonly detail: string;
}

/**
 * The only error the pure core throws for a value it refuses. It carries a place for each violation, so that a form
 * can mark the field instead of showing one sentence for a survey of a hundred readings.
 */
export class DomainError extends Error {
  readonly violations: readonly Violation[];

  constructor(violations: readonly Violation[]) {
    super(violations.map((violation) => `${violation.pointer || 'value'}: ${violation.detail}`).join('; '));
    this.name = 'DomainError';
    this.violations = violations;
  }

  static at(pointer: string, detail: string): DomainError {
    return new DomainError([{ pointer, detail }]);
  }

  /** The same violations, seen from a value that holds the refused one at `prefix`. */
  under(prefix: string): DomainError {
    return new DomainError(this.violations.map(({ pointer, detail }) => ({ pointer: prefix + pointer, detail })));
  }
}

/** Runs `work`; the violations of a {@link DomainError} it throws are re-pointed below `prefix`. */
export function within<T>(prefix: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw error instanceof DomainError ? error.under(prefix) : error;
  }
}

/**
 * Reads several fields, each below its own name, and reports what is wrong with all of them at once, so that a form is
 * not mended one field a request.
 */
export function fields<T extends Record<string, () => unknown>>(readers: T): { [K in keyof T]: ReturnType<T[K]> } {
  const violations: Violation[] = [];
  const values: Record<string, unknown> = {};
  for (const [name, read] of Object.entries(readers)) {
    try {
      values[name] = within(`/${name}`, read);
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      violations.push(...error.violations);
    }
  }
  if (violations.length > 0) throw new DomainError(violations);
  return values as { [K in keyof T]: ReturnType<T[K]> };
}
