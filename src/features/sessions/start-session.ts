import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../platform/auth/actor.js';
import { newSecretToken } from '../../platform/auth/secret-token.js';
import { SessionTokens } from './session-tokens.js';
import type { SessionView } from './sessions.dto.js';
import { SessionsRepository } from './sessions.repository.js';

/** Opens a session for a person who has proved who they are. */
@Injectable()
export class StartSession {
  constructor(
    private readonly sessions: SessionsRepository,
    private readonly tokens: SessionTokens,
  ) {}

  /** @param deviceId the enrolled device that signs in, or null for a password */
  async execute(companyId: string, personId: string, deviceId: string | null): Promise<SessionView> {
    // The role plays no part yet: what follows reads and writes as the person, inside the company.
    const actor: Actor = { companyId, personId, role: 'crew', sessionId: null };
    const id = uuidv7();
    const refresh = newSecretToken(companyId);
    await this.sessions.start(actor, { id, personId, deviceId }, refresh, this.tokens.refreshExpiry());
    return this.tokens.answer(actor, personId, id, refresh);
  }
}
