import { Injectable } from '@nestjs/common';
import type { TokenSubject } from '../../platform/auth/access-tokens.js';
import type { Role } from '../../platform/auth/actor.js';
import { SessionGate } from '../../platform/auth/session-gate.js';
import { Clock } from '../../platform/clock/clock.js';
import type { Problem } from '../../platform/http/problem.js';
import { deviceRevoked, sessionEnded } from './refusals.js';
import { SessionsRepository, type Standing } from './sessions.repository.js';

/** A lost phone or a dismissed person is shut out after this at the latest, on every instance. */
const BELIEVED_MS = 3_000;
const MOST_REMEMBERED = 5_000;
/** When a device was last seen is known to this, so that a busy phone is not a write for each request. */
const SEEN_MS = 60_000;

interface Known {
  readonly standing: Promise<Standing | null>;
  readonly until: number;
}

/** Whether sessions stand: asked of the database at most once in a few seconds for each, not for each request. */
@Injectable()
export class StandingSessions extends SessionGate {
  private readonly known = new Map<string, Known>();

  constructor(
    private readonly sessions: SessionsRepository,
    private readonly clock: Clock,
  ) {
    super();
  }

  override async roleOf(subject: TokenSubject): Promise<Role | null> {
    return (await this.standingOf(subject))?.role ?? null;
  }

  override async refusal(subject: TokenSubject): Promise<Problem> {
    return (await this.standingOf(subject))?.shutOut === true ? deviceRevoked() : sessionEnded();
  }

  forget(companyId: string, sessionId: string): void {
    this.known.delete(`${companyId} ${sessionId}`);
  }

  private standingOf({ companyId, sessionId }: TokenSubject): Promise<Standing | null> {
    const key = `${companyId} ${sessionId}`;
    const now = performance.now();
    const known = this.known.get(key);
    if (known !== undefined && known.until > now) return known.standing;
    const standing = this.ask(companyId, sessionId);
    this.remember(key, { standing, until: now + BELIEVED_MS });
    // A failed question must not be remembered as an answer.
    standing.catch(() => this.known.delete(key));
    return standing;
  }

  private async ask(companyId: string, sessionId: string): Promise<Standing | null> {
    const standing = await this.sessions.standing(companyId, sessionId);
    if (standing !== null && standing.role !== null && standing.deviceId !== null) await this.see(companyId, standing.deviceId, standing.lastSeenAt);
    return standing;
  }

  private async see(companyId: string, deviceId: string, lastSeenAt: Date | null): Promise<void> {
    const now = this.clock.now();
    const unless = new Date(now.getTime() - SEEN_MS);
    if (lastSeenAt === null || lastSeenAt <= unless) await this.sessions.markSeen(companyId, deviceId, now, unless);
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
