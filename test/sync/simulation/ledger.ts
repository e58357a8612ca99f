import { came, type Mutation, type Outcome } from '../../../examples/crew-client/index.js';

/** What a mutation must come to, whatever else happens at the same time. */
export type Expected = 'applied' | 'rejected' | 'applied or conflict';

/** What a mutation says, as far as the ledger needs it. */
export type Said = Pick<Mutation, 'id' | 'kind' | 'body' | 'baseRevision'>;

export interface Noted {
  readonly mutation: Said;
  readonly expected: Expected;
  readonly phone: string;
  /** Whose phone it is. */
  readonly worker: string;
  /** Milliseconds of the wall clock: the service judged it between these. */
  readonly notedAt: number;
  settledAt: number;
  /** What the phone was told; null until then. */
  outcome: Outcome | null;
  /** The phone was gone for good before it could send this. */
  lost: boolean;
}

/** Everything that phones ever noted and were told: what the service is held against in the end. */
export class Ledger {
  readonly noted = new Map<string, Noted>();
  readonly violations: string[] = [];
  private readonly unsettled = new Map<string, Set<string>>();

  note(mutation: Said, expected: Expected, phone: string, worker: string): void {
    this.noted.set(mutation.id, { mutation, expected, phone, worker, notedAt: Date.now(), settledAt: Infinity, outcome: null, lost: false });
    const open = this.unsettled.get(phone) ?? new Set();
    this.unsettled.set(phone, open.add(mutation.id));
  }

  settle(outcome: Outcome): void {
    const noted = this.noted.get(outcome.id);
    if (noted === undefined) return this.violate(`an outcome came for ${outcome.id}, which nobody noted`);
    if (noted.outcome !== null) this.violate(`${outcome.id} was settled twice`);
    if (noted.lost) this.violate(`${outcome.id} was settled, though its phone is gone`);
    noted.outcome = outcome;
    noted.settledAt = Date.now();
    this.unsettled.get(noted.phone)?.delete(outcome.id);
  }

  /** What this phone noted and did not send is gone with it. */
  lose(phone: string): void {
    for (const id of this.unsettledOf(phone)) (this.noted.get(id) as Noted).lost = true;
    this.unsettled.delete(phone);
  }

  /** What was noted, was not lost, and came to this. */
  cameTo(verdict: ReturnType<typeof came>): Noted[] {
    return [...this.noted.values()].filter(({ outcome }) => outcome !== null && came(outcome) === verdict);
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
