import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { decodeSecretToken, newSecretToken, sameSecret, type SecretToken } from '../../platform/auth/secret-token.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { Problem } from '../../platform/http/problem.js';
import { deviceRevoked } from './refusals.js';
import { SessionTokens } from './session-tokens.js';
import type { SessionView } from './sessions.dto.js';
import { SessionsRepository } from './sessions.repository.js';
import { StandingSessions } from './standing-sessions.js';

/**
 * Exchanges a refresh token for the next pair. A token that was used before is in two hands, one of them a thief's:
 * the whole family is revoked, and both must sign in again.
 */
@Injectable()
export class RefreshSession {
  constructor(
    private readonly db: TenantDatabase,
    private readonly sessions: SessionsRepository,
    private readonly tokens: SessionTokens,
    private readonly clock: Clock,
    private readonly standing: StandingSessions,
  ) {}

  async execute(token: string): Promise<SessionView> {
    const parts = decodeSecretToken(token);
    if (parts === null) throw ended();
    const actor: Actor = { companyId: parts.companyId, personId: null, role: 'crew', sessionId: null };
    // The revocation must stay when the answer is a refusal, so the refusal is thrown after the commit.
    const next = await this.db.write(actor, () => this.rotate(actor, parts));
    if (next instanceof Problem) throw next;
    return this.tokens.answer(actor, next.personId, next.sessionId, next.refresh);
  }

  private async rotate(actor: Actor, parts: SecretToken): Promise<{ personId: string; sessionId: string; refresh: SecretToken } | Problem> {
    const row = await this.sessions.lockToken(actor, parts.id);
    if (row === null || !sameSecret(parts.secret, row.secretHash)) return ended();
    const now = this.clock.now();
    if (row.usedAt !== null) {
      await this.sessions.revoke(actor, row.sessionId, now, 'a refresh token was used twice');
      this.standing.forget(actor.companyId, row.sessionId);
      return ended();
    }
    const standing = await this.sessions.standing(actor.companyId, row.sessionId);
    // A phone that was away for a day learns here, and not by its expired access token, that it was shut out.
    if (standing?.shutOut === true) return deviceRevoked();
    if (standing === null || standing.role === null || row.expiresAt <= now) return ended();
    await this.sessions.markUsed(actor, row.id, now);
    const refresh = newSecretToken(actor.companyId);
    await this.sessions.addToken(actor, row.sessionId, refresh, this.tokens.refreshExpiry());
    return { personId: standing.personId, sessionId: row.sessionId, refresh };
  }
}

function ended(): Problem {
  return new Problem('session-ended', 'The refresh token is not valid, was used before, or has expired. Sign in again.');
}
