import { createPrivateKey, createPublicKey } from 'node:crypto';
import { jwtVerify, SignJWT } from 'jose';
import { Injectable } from '@nestjs/common';
import { isUuid } from '../http/fields/ids.js';

export interface TokenSubject {
  readonly companyId: string;
  readonly personId: string;
  readonly sessionId: string;
}

interface Checked extends TokenSubject {
  readonly expiresAt: number;
}

export const ACCESS_TOKEN_SECONDS = 600;
const ISSUER = 'rillbook';
const TYPE = 'at+jwt';
const MOST_REMEMBERED = 2_000;

/** Short-lived access tokens, signed with Ed25519 (RFC 8037), checked as RFC 8725 asks: one algorithm, issuer, type, expiry. */
@Injectable()
export class AccessTokens {
  private readonly privateKey;
  private readonly publicKey;
  /** Tokens whose signature was checked already; the oldest leave first. Saves a signature check for each request. */
  private readonly remembered = new Map<string, Checked>();

  constructor(signingKeyPem: string) {
    this.privateKey = createPrivateKey(signingKeyPem);
    this.publicKey = createPublicKey(this.privateKey);
  }

  async issue(subject: TokenSubject, now: Date): Promise<string> {
    const seconds = Math.floor(now.getTime() / 1000);
    return new SignJWT({ company: subject.companyId, session: subject.sessionId })
      .setProtectedHeader({ alg: 'EdDSA', typ: TYPE })
      .setIssuer(ISSUER)
      .setAudience(ISSUER)
      .setSubject(subject.personId)
      .setIssuedAt(seconds)
      .setExpirationTime(seconds + ACCESS_TOKEN_SECONDS)
      .sign(this.privateKey);
  }

  /** Whom the token speaks for, or null when it is no valid token of ours at this moment. */
  async check(token: string, now: Date): Promise<TokenSubject | null> {
    const known = this.remembered.get(token) ?? (await this.verify(token, now));
    return known !== null && known.expiresAt > now.getTime() ? known : null;
  }

  private async verify(token: string, now: Date): Promise<Checked | null> {
    try {
      const { payload } = await jwtVerify(token, this.publicKey, { algorithms: ['EdDSA'], issuer: ISSUER, audience: ISSUER, typ: TYPE, currentDate: now });
      const { sub, company, session, exp } = payload;
      if (!isUuid(sub) || !isUuid(company) || !isUuid(session) || exp === undefined) return null;
      const checked = { personId: sub, companyId: company, sessionId: session, expiresAt: exp * 1000 };
      this.remember(token, checked);
      return checked;
    } catch {
      return null;
    }
  }

  private remember(token: string, checked: Checked): void {
    if (this.remembered.size >= MOST_REMEMBERED) {
      const oldest = this.remembered.keys().next().value;
      if (oldest !== undefined) this.remembered.delete(oldest);
    }
    this.remembered.set(token, checked);
  }
}
