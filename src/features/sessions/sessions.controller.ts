import { Body, Controller, HttpCode, Post, Req } from '@nestjs/common';
import { ApiOperation, ApiResponse } from '@nestjs/swagger';
import type { FastifyRequest } from 'fastify';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { CurrentActor, Open } from '../../platform/auth/allow.js';
import { Clock } from '../../platform/clock/clock.js';
import { ApiProblems, EndRoute } from '../../platform/http/api.js';
import { RefreshSession } from './refresh-session.js';
import { RefreshBody, SessionView, SignInBody } from './sessions.dto.js';
import { SessionsRepository } from './sessions.repository.js';
import { SignIn } from './sign-in.js';
import { StandingSessions } from './standing-sessions.js';

@Controller('v1/sessions')
export class SessionsController {
  constructor(
    private readonly signIn: SignIn,
    private readonly refreshSession: RefreshSession,
    private readonly sessions: SessionsRepository,
    private readonly standing: StandingSessions,
    private readonly clock: Clock,
  ) {}

  @Post()
  @Open()
  @ApiOperation({ summary: 'Sign in', description: 'Failed attempts are limited by account and by address.' })
  @ApiResponse({ status: 201, description: 'Signed in.', type: SessionView })
  @ApiProblems(['invalid-input', 'malformed-request', 'sign-in-failed', 'company-choice', 'too-many-attempts', 'body-too-large', 'wrong-media-type', 'unexpected', 'unavailable'])
  create(@Body() body: SignInBody, @Req() request: FastifyRequest): Promise<SessionView> {
    return this.signIn.execute(body, request.ip);
  }

  @Post('refresh')
  @HttpCode(200)
  @Open()
  @ApiOperation({ summary: 'Exchange a refresh token for the next pair of tokens', description: 'Each refresh token can be used once. One used twice ends the session.' })
  @ApiResponse({ status: 200, description: 'The next pair.', type: SessionView })
  @ApiProblems(['invalid-input', 'malformed-request', 'session-ended', 'device-revoked', 'body-too-large', 'wrong-media-type', 'unexpected', 'unavailable'])
  refresh(@Body() body: RefreshBody): Promise<SessionView> {
    return this.refreshSession.execute(body.refreshToken);
  }

  @EndRoute({ path: 'current', roles: EVERYONE, summary: 'Sign out: ends this session and all its tokens' })
  async end(@CurrentActor() actor: Actor): Promise<void> {
    if (actor.sessionId === null) return;
    await this.sessions.revoke(actor, actor.sessionId, this.clock.now(), 'signed out');
    this.standing.forget(actor.companyId, actor.sessionId);
  }
}
