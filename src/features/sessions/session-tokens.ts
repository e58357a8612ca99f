import { Injectable } from '@nestjs/common';
import { ACCESS_TOKEN_SECONDS, AccessTokens } from '../../platform/auth/access-tokens.js';
import type { Actor } from '../../platform/auth/actor.js';
import { encodeSecretToken, type SecretToken } from '../../platform/auth/secret-token.js';
import { Clock } from '../../platform/clock/clock.js';
import { CompaniesService } from '../companies/index.js';
import { PeopleService } from '../people/index.js';
import type { SessionView } from './sessions.dto.js';

/** A phone may lie in a drawer over a winter break of some weeks; after that its person signs in again. */
const REFRESH_TOKEN_DAYS = 60;

/** Puts the answer to a sign-in or a refresh together. */
@Injectable()
export class SessionTokens {
  constructor(
    private readonly tokens: AccessTokens,
    private readonly clock: Clock,
    private readonly people: PeopleService,
    private readonly companies: CompaniesService,
  ) {}

  refreshExpiry(): Date {
    return new Date(this.clock.now().getTime() + REFRESH_TOKEN_DAYS * 86_400_000);
  }

  async answer(actor: Actor, personId: string, sessionId: string, refresh: SecretToken): Promise<SessionView> {
    const person = await this.people.find(actor, personId);
    const company = await this.companies.current(actor);
    return {
      accessToken: await this.tokens.issue({ companyId: actor.companyId, personId, sessionId }, this.clock.now()),
      expiresIn: ACCESS_TOKEN_SECONDS,
      refreshToken: encodeSecretToken(refresh),
      person: { id: person.id, name: person.name, role: person.role },
      company: { id: company.companyId, name: company.name, currency: company.currency, timeZone: company.timeZone },
    };
  }
}
