import type { SessionAnswer } from './contract.js';
import { LogFile } from './log-file.js';
import { carry, exchange, Refused, type Wire, type WireAnswer, type WireRequest } from './wire.js';

/** Gets a session without one: by password, or by what the phone was given when it was enrolled. */
export interface SignIn {
  /** @throws NoAnswer or Refused */
  open(wire: Wire): Promise<SessionAnswer>;
  /** What the service said when it shut this device out for good; null while it did not. */
  readonly shutOutBecause?: string | null;
  /** Is told so, to remember it over a restart. */
  shutOut?(because: string): void;
}

export function byPassword(email: string, password: string): SignIn {
  return { open: (wire) => exchange<SessionAnswer>(wire, 'POST', '/v1/sessions', { email, password }) };
}

/** Nothing the phone has opens a session any more; its unsent work is still in the outbox. */
export class SignedOut extends Error {}

/** The phone was reported lost, or was given up: the service takes nothing from it for good. Its work can be handed out. */
export class ShutOut extends SignedOut {}

/** Renewed this long before it ends: an upload over one bar of signal takes its time. */
const MARGIN_MS = 30_000;

interface Kept {
  readonly refreshToken: string;
}

/** Sends requests as the phone's person, and gets a new access token when the old one is over. */
export class Session {
  private access: { readonly token: string; readonly until: number } | null = null;
  private renewal: Promise<void> | null = null;
  private readonly file: LogFile<Kept>;
  private refreshToken: string | null;

  constructor(
    name: string,
    private readonly wire: Wire,
    private readonly signIn: SignIn,
    private readonly elapsed: () => number,
  ) {
    const { file, records } = LogFile.open<Kept>(name);
    this.file = file;
    this.refreshToken = records.at(-1)?.refreshToken ?? null;
  }

  /** Sends and reads JSON. @throws NoAnswer, Refused or SignedOut */
  send<T>(method: WireRequest['method'], path: string, body?: object): Promise<T> {
    return this.asPerson((token) => exchange<T>(this.wire, method, path, body, token));
  }

  /** Sends anything. @throws NoAnswer, Refused or SignedOut */
  carry(request: WireRequest): Promise<WireAnswer> {
    return this.asPerson((token) => carry(this.wire, { ...request, headers: { ...request.headers, authorization: `Bearer ${token}` } }));
  }

  close(): void {
    this.file.close();
  }

  private async asPerson<T>(work: (token: string) => Promise<T>): Promise<T> {
    const token = await this.token();
    try {
      return await work(token);
    } catch (error) {
      if (!isUnauthorized(error)) throw error;
      if (isRevocation(error)) throw this.signedOut(error);
      // The service knows better than this clock when a token is over: once more with a new one.
      if (this.access?.token === token) this.access = null;
      return work(await this.token()).catch((again: unknown) => {
        throw isUnauthorized(again) ? this.signedOut(again) : again;
      });
    }
  }

  /** Time is counted from the answer and never read off a clock on the wall: a phone's may be wrong by days. */
  private async token(): Promise<string> {
    const because = this.signIn.shutOutBecause ?? null;
    if (because !== null) throw new ShutOut(because);
    if (this.access === null || this.access.until <= this.elapsed()) {
      // A refresh token counts once: two requests that find the session over must not both use it.
      this.renewal ??= this.renew().finally(() => (this.renewal = null));
      await this.renewal;
    }
    if (this.access === null) throw new SignedOut('There is no session.');
    return this.access.token;
  }

  private async renew(): Promise<void> {
    const asked = this.elapsed();
    const session = (await this.refreshed()) ?? (await this.signedIn());
    // The file first: the old token is worth nothing after this answer.
    this.file.replace([{ refreshToken: session.refreshToken }]);
    this.refreshToken = session.refreshToken;
    this.access = { token: session.accessToken, until: asked + session.expiresIn * 1_000 - MARGIN_MS };
  }

  /** null when it takes a sign-in: the token is too old, or the answer to its last use never arrived, which ends its session. */
  private async refreshed(): Promise<SessionAnswer | null> {
    if (this.refreshToken === null) return null;
    try {
      return await exchange<SessionAnswer>(this.wire, 'POST', '/v1/sessions/refresh', { refreshToken: this.refreshToken });
    } catch (error) {
      if (!isForGood(error)) throw error;
      if (isRevocation(error)) throw this.signedOut(error);
      this.refreshToken = null;
      return null;
    }
  }

  /** Whatever was wrong with the sign-in, it must not be taken for an answer to the request that needed it. */
  private signedIn(): Promise<SessionAnswer> {
    return this.signIn.open(this.wire).catch((error: unknown) => {
      throw isForGood(error) ? this.signedOut(error) : error;
    });
  }

  private signedOut(error: Refused): SignedOut {
    const words = `${error.problem.code}: ${error.problem.detail}`;
    if (!isRevocation(error)) return new SignedOut(words, { cause: error });
    // The tokens first: they would shut out the same phone again after it was enrolled anew.
    this.file.replace([]);
    this.refreshToken = this.access = null;
    this.signIn.shutOut?.(words);
    return new ShutOut(words, { cause: error });
  }
}

function isUnauthorized(error: unknown): error is Refused {
  return error instanceof Refused && error.status === 401;
}

function isForGood(error: unknown): error is Refused {
  return error instanceof Refused && !error.passing;
}

/** Only these words mean for good: any box between the phone and the service may say 401. */
function isRevocation({ problem }: Refused): boolean {
  return problem.code === 'device-revoked';
}
