import { Injectable } from '@nestjs/common';
import type { Actor, Role } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { deviceRevoked } from './refusals.js';
import type { SessionView } from './sessions.dto.js';
import { SessionsRepository } from './sessions.repository.js';
import { StandingSessions } from './standing-sessions.js';
import { StartSession } from './start-session.js';

/** The sessions of enrolled devices, for the slice that owns the devices. */
@Injectable()
export class DeviceSessions {
  constructor(
    private readonly sessions: SessionsRepository,
    private readonly standing: StandingSessions,
    private readonly startSession: StartSession,
    private readonly clock: Clock,
  ) {}

  /** Opens the one session that a device has; those before end, for `forget` once that is committed. */
  async start(actor: Actor, device: { id: string; personId: string }): Promise<{ session: SessionView; ended: readonly string[] }> {
    const ended = await this.end(actor, device.id, 'the device signed in again');
    return { session: await this.startSession.execute(actor.companyId, device.personId, device.id), ended };
  }

  /** Returns the ids of the sessions that ended, for `forget` once that is committed. */
  end(actor: Actor, deviceId: string, because: string): Promise<string[]> {
    return this.sessions.revokeAllOfDevice(actor, deviceId, this.clock.now(), because);
  }

  /** Makes an end count at once in this process; others notice within seconds. */
  forget(companyId: string, sessionIds: readonly string[]): void {
    for (const id of sessionIds) this.standing.forget(companyId, id);
  }

  /**
   * The enrolled device that somebody acts through, or null. It can't be revoked before the transaction of the caller
   * ends, so that a revocation finds what is made there for the device.
   * @throws Problem 401 when it was revoked meanwhile
   */
  async deviceOf(actor: Actor): Promise<string | null> {
    const device = actor.sessionId === null ? null : await this.sessions.lockDevice(actor, actor.sessionId);
    if (device?.revoked === true) throw deviceRevoked();
    return device?.id ?? null;
  }

  /** Who a session stands for at this moment, or null when it has ended. */
  async signedIn(companyId: string, sessionId: string): Promise<{ personId: string; role: Role } | null> {
    const standing = await this.sessions.standing(companyId, sessionId);
    return standing?.role == null ? null : { personId: standing.personId, role: standing.role };
  }
}
