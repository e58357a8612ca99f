import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { SessionGate } from '../../../platform/auth/session-gate.js';

/**
 * Whether a phone that is pushing may go on. A push of many changes takes seconds, and a lost phone that is shut out
 * meanwhile would hand in all the rest, and be shown the rows that it is in conflict with.
 */
@Injectable()
export class StandingPusher {
  constructor(private readonly gate: SessionGate) {}

  /** Costs a look into memory, a question to the database every few seconds. @throws Problem 401 once the session was ended */
  async require({ companyId, personId, sessionId }: Actor): Promise<void> {
    if (personId === null || sessionId === null) return;
    const subject = { companyId, personId, sessionId };
    if ((await this.gate.roleOf(subject)) === null) throw await this.gate.refusal(subject);
  }
}
