import { Injectable } from '@nestjs/common';
import { Passwords } from '../../platform/auth/passwords.js';
import { Problem } from '../../platform/http/problem.js';
import { AttemptLimits } from './attempt-limits.js';
import type { SessionView, SignInBody } from './sessions.dto.js';
import { type SignIn as Candidate, SessionsRepository } from './sessions.repository.js';
import { StartSession } from './start-session.js';

/** Signs a person in by e-mail address and password. */
@Injectable()
export class SignIn {
  constructor(
    private readonly sessions: SessionsRepository,
    private readonly passwords: Passwords,
    private readonly limits: AttemptLimits,
    private readonly startSession: StartSession,
  ) {}

  async execute(input: SignInBody, address: string): Promise<SessionView> {
    await this.limits.begin(input.email, address);
    const matching = await this.matching(input);
    const [first, another] = matching;
    if (first === undefined) throw new Problem('sign-in-failed', 'The e-mail address or the password is wrong, or the person may not sign in. Check both; the owner of the company can set a new password.');
    await this.limits.succeeded(input.email, address);
    if (another !== undefined) {
      throw new Problem('company-choice', `The address belongs to people of several companies. Send companyId as well: one of ${matching.map((m) => m.companyId).join(', ')}.`, [{ pointer: '/companyId', detail: 'is needed to tell the companies apart' }]);
    }
    return this.startSession.execute(first.companyId, first.personId, null);
  }

  private async matching(input: SignInBody): Promise<Candidate[]> {
    const candidates = (await this.sessions.signIns(input.email)).filter((c) => !input.companyId || c.companyId === input.companyId.toLowerCase());
    if (candidates.length === 0) await this.passwords.verifyNothing(input.password);
    const matching: Candidate[] = [];
    for (const candidate of candidates) {
      if (await this.passwords.verify(candidate.passwordHash, input.password)) matching.push(candidate);
    }
    return matching;
  }
}
