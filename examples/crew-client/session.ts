import type { SessionAnswer } from './contract.js';
import { LogFile } from './log-file.js';
import { exchange, Refused, type Wire, type WireRequest } from './wire.js';

/** Gets a session without one: by password, or by what the phone was given when it was enrolled. */
export type SignIn = (wire: Wire) => Promise<SessionAnswer>;

export function byPassword(email: string, password: string): SignIn {
  return (wire) => exchange<SessionAnswer>(wire, 'POST', '/v1/sessions', { email, password });
}

/** Nothing the phone has opens a session any more; its unsent work is still in the outbox. */
export class SignedOut extends Error {}

/** Renewed this long before it ends: an upload over one bar of signal takes its time. */
const MARGIN_MS = 30_000;

interface Kept {
  readonly refreshToken: string;
}

/** Sends requests as the phone's person, and gets a new access token when the old one is over. */
export class Session {
  private access: { readonly token: string; readonly until: number } | null = null;
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

  /** @throws NoAnswer, Refused or SignedOut */
  async send<T>(method: WireRequest['method'], path: string, body?: object): Promise<T> {
    try {
      return await exchange<T>(this.wire, method, path, body, await this.token());
    } catch (error) {
      if (!isUnauthorized(error)) throw error;
      // The service knows better than this clock when a token is over: once more with a new one.
      this.access = null;
      return exchange<T>(this.wire, method, path, body, await this.token()).catch((again: unknown) => {
        throw isUnauthorized(again) ? signedOut(again) : again;
      });
    }
  }

  close(): void {
    this.file.close();
  }

  /** Time is counted from the answer and never read off a clock on the wall: a phone's may be wrong by days. */
  private async token(): Promise<string> {
    if (this.access === null || this.access.until <= this.elapsed()) await this.renew();
    if (this.access === null) throw new SignedOut('There is no session.');
    return this.access.token;
  }

  private async renew(): Promise<void> {
    const asked = this.elapsed();
    const session = (await this.refreshed()) ?? (await this.signedIn());
    // The file first: a refresh token counts once, so the old one is worth nothing after this answer.
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
      if (!isUnauthorized(error)) throw error;
      this.refreshToken = null;
      return null;
    }
  }

  private async signedIn(): Promise<SessionAnswer> {
    return this.signIn(this.wire).catch((error: unknown) => {
      throw isUnauthorized(error) ? signedOut(error) : error;
    });
  }
}


function isUnauthorized(error: unknown): error is Refused {
  return error instanceof Refused && error.status === 401;
}

function signedOut(error: Refused): SignedOut {
  return new SignedOut(`${error.problem.code}: ${error.problem.detail}`, { cause: error });
}
