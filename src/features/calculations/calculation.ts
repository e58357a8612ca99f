import type { Role } from '../../platform/auth/actor.js';

/** A class that describes an input or an output, field by field. */
export type Shape<T extends object> = new () => T;

/**
 * One computation of the trade as the API serves it: POST /v1/calculations/{name}. `run` is pure; a DomainError that it
 * throws points into the input.
 */
export interface Calculation<I extends object = object, O extends object = object> {
  /** In the path: lower-case words with hyphens. */
  readonly name: string;
  readonly title: string;
  /** What it is good for, what it assumes, its range and its source. */
  readonly description: string;
  readonly input: Shape<I>;
  readonly output: Shape<O>;
  readonly run: (input: I) => O;
  /** Who may use it; everybody unless told. None of them takes or gives a price unless it says so here. */
  readonly roles?: readonly Role[];
}

/** Keeps the types of input and output together while the list of all calculations forgets them. */
export function calculation<I extends object, O extends object>(definition: Calculation<I, O>): Calculation {
  return definition as unknown as Calculation;
}
