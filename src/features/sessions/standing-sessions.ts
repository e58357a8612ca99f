import { Injectable } from '@nestjs/common';
import type { TokenSubject } from '../../platform/auth/access-tokens.js';
import { type Role, ROLES } from '../../platform/auth/actor.js';
import { SessionGate } from '../../platform/auth/session-gate.js';
import { SessionsRepository } from './sessions.repository.js';

/** A lost phone or a dismissed person is shut out after this at the latest, on every instance. */
const BELIEVED_MS = 3_000;
const MOST_REMEMBERED = 5_000;

interface Known {
  readonly role: Promise<Role | null>;
  readonly until: number;
}

/** Whether sessions stand: asked of the database at most once in a few seconds for each, not for each request. */
@Injectable()
export class StandingSessions extends SessionGate {
  private readonly known = new Map<string, Known>();

  constructor(private readonly sessions: SessionsRepository) {
    super();
  }

  override roleOf({ companyId, sessionId }: TokenSubject): Promise<Role | null> {
    const key = `${companyId} ${sessionId}`;
    const now = performance.now();
    const known = this.known.get(key);
    if (known !== undefined && known.until > now) return known.role;
    const role = this.ask(companyId, sessionId);
    this.remember(key, { role, until: now + BELIEVED_MS });
    // A failed question must not be remembered as an answer.
    role.catch(() => this.known.delete(key));
    return role;
  }

  forget(companyId: string, sessionId: string): void {
    this.known.delete(`${companyId} ${sessionId}`);
  }

  private async ask(companyId: string, sessionId: string): Promise<Role | null> {
    const role = await this.sessions.standing(companyId, sessionId);
    return ROLES.find((known) => known === role) ?? null;
  }

  private remember(key: string, known: Known): void {
    this.known.delete(key);
    if (this.known.size >= MOST_REMEMBERED) {
      const oldest = this.known.keys().next().value;
      if (oldest !== undefined) this.known.delete(oldest);
    }
    this.known.set(key, known);
  }
}
