import type { Mutation, Outcome } from '../../../examples/crew-client/index.js';

/** What a mutation must come to, whatever else happens at the same time. */
export type Expected = 'applied' | 'rejected' | 'applied or conflict';

export interface Noted {
  readonly mutation: Mutation;
  readonly expected: Expected;
  readonly phone: string;
  /** What the phone was told; null until then. */
  outcome: Outcome | null;
}

/** Everything that phones ever noted and were told: what the service is held against in the end. */
export class Ledger {
  readonly noted = new Map<string, Noted>();
  readonly violations: string[] = [];
  private readonly unsettled = new Map<string, Set<string>>();

  note(mutation: Mutation, expected: Expected, phone: string): void {
    this.noted.set(mutation.id, { mutation, expected, phone, outcome: null });
    const open = this.unsettled.get(phone) ?? new Set();
    this.unsettled.set(phone, open.add(mutation.id));
  }

  settle(outcome: Outcome): void {
    const noted = this.noted.get(outcome.id);
    if (noted === undefined) return this.violate(`an outcome came for ${outcome.id}, which nobody noted`);
    if (noted.outcome !== null) this.violate(`${outcome.id} was settled twice`);
    noted.outcome = outcome;
    this.unsettled.get(noted.phone)?.delete(outcome.id);
  }

  violate(what: string): void {
    // A broken rule breaks often; the first few tell which.
    if (this.violations.length < 40) this.violations.push(what);
  }

  /** The ids of what a phone noted and has no outcome of, in the order of noting. */
  unsettledOf(phone: string): string[] {
    return [...(this.unsettled.get(phone) ?? [])];
  }
}

/** What came of it the first time. */
export function came(outcome: Outcome): 'applied' | 'conflict' | 'rejected' | undefined {
  return outcome.outcome === 'duplicate' ? outcome.first : outcome.outcome;
}
