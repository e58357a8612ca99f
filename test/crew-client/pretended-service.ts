import type { Mutation, Outcome, PulledItem, PullAnswer, PushAnswer } from '../../examples/crew-client/contract.js';
import type { Wire, WireAnswer, WireRequest } from '../../examples/crew-client/index.js';

/** As much of the service as the client's own tests need: it keeps mutations by their ids and hands out what it is told to. */
export class PretendedService {
  /** Each mutation that had an effect, in the order of its first arrival. */
  readonly applied: Mutation[] = [];
  readonly sizes: number[] = [];
  /** The pages of a pull; the cursor is the number of the next one. */
  pages: PulledItem[][] = [];
  /** Whether the next cursor that comes is too old. */
  cursorsExpired = false;
  largestPush = 500;
  /** Sessions that were opened or renewed. */
  signIns = 0;
  /** Refresh tokens that were no good. */
  refused = 0;
  private readonly outcomes = new Map<string, Outcome>();
  private token = '';
  private refresh = '';

  /** What to say of a mutation; null: it is applied. */
  judge: (mutation: Mutation) => Omit<Outcome, 'id'> | null = () => null;

  readonly wire: Wire = (request) => Promise.resolve(this.answer(request));

  endSession(): void {
    this.token = this.refresh = '';
  }

  /** The access token is over, the refresh token is not. */
  expireAccess(): void {
    this.token = '';
  }

  private answer({ path, headers, body }: WireRequest): WireAnswer {
    const sent = body === undefined ? {} : (JSON.parse(body as string) as Record<string, unknown>);
    if (path === '/v1/sessions') return sent['password'] === 'right' ? this.session() : problem(401, 'sign-in-failed');
    if (path === '/v1/sessions/refresh') return this.renewed(sent['refreshToken']);
    if (headers['authorization'] !== `Bearer ${this.token}` || this.token === '') return problem(401, 'not-signed-in');
    if (path === '/v1/sync/push') return this.push(sent['mutations'] as Mutation[]);
    return this.pull(new URL(path, 'http://phone.example').searchParams.get('cursor'));
  }

  private renewed(refreshToken: unknown): WireAnswer {
    if (this.refresh !== '' && refreshToken === this.refresh) return this.session();
    this.refused++;
    return problem(401, 'session-ended');
  }

  private session(): WireAnswer {
    this.signIns++;
    this.token = `access-${this.signIns}`;
    this.refresh = `refresh-${this.signIns}`;
    return answer(200, { accessToken: this.token, refreshToken: this.refresh, expiresIn: 600, person: { id: 'p', name: 'Test crew', role: 'crew' } });
  }

  private push(mutations: Mutation[]): WireAnswer {
    this.sizes.push(mutations.length);
    if (mutations.length > this.largestPush) return problem(413, 'body-too-large');
    const items = mutations.map((mutation): Outcome => {
      const before = this.outcomes.get(mutation.id);
      if (before !== undefined) return { ...before, outcome: 'duplicate', first: before.outcome as 'applied' };
      const outcome: Outcome = { id: mutation.id, ...(this.judge(mutation) ?? { outcome: 'applied', final: true }) };
      if (outcome.final) this.outcomes.set(mutation.id, outcome);
      if (outcome.outcome === 'applied') this.applied.push(mutation);
      return outcome;
    });
    const pushed: PushAnswer = { receivedAt: '2027-05-03T12:00:00Z', clockSkewSeconds: 0, warnings: [], items };
    return answer(200, pushed);
  }

  private pull(cursor: string | null): WireAnswer {
    if (cursor !== null && this.cursorsExpired) {
      this.cursorsExpired = false;
      return problem(410, 'cursor-expired');
    }
    const at = Number(cursor ?? 0);
    const next = Math.min(at + 1, this.pages.length);
    const page: PullAnswer = { items: this.pages[at] ?? [], cursor: String(next), more: next < this.pages.length };
    return answer(200, page);
  }
}

function answer(status: number, body: object): WireAnswer {
  return { status, headers: new Headers(), text: JSON.stringify(body) };
}

export function problem(status: number, code: string): WireAnswer {
  return answer(status, { status, code, detail: 'as the test wants it' });
}
