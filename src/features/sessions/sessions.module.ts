import { Global, Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { SessionGate } from '../../platform/auth/session-gate.js';
import { CompaniesModule } from '../companies/index.js';
import { PeopleModule } from '../people/index.js';
import { AttemptLimits } from './attempt-limits.js';
import { CredentialEntity } from './credential.entity.js';
import { DeviceSessions } from './device-sessions.js';
import { PasswordsController } from './passwords.controller.js';
import { RefreshSession } from './refresh-session.js';
import { RefreshTokenEntity } from './refresh-token.entity.js';
import { SessionEntity } from './session.entity.js';
import { SessionTokens } from './session-tokens.js';
import { SessionsController } from './sessions.controller.js';
import { SessionsRepository } from './sessions.repository.js';
import { SetPassword } from './set-password.js';
import { SignIn } from './sign-in.js';
import { StandingSessions } from './standing-sessions.js';
import { StartSession } from './start-session.js';

/** Global, since the guard of every route asks it whether a session stands. */
@Global()
@Module({
  imports: [TypeOrmModule.forFeature([SessionEntity, RefreshTokenEntity, CredentialEntity]), PeopleModule, CompaniesModule],
  controllers: [SessionsController, PasswordsController],
  providers: [SessionsRepository, StandingSessions, { provide: SessionGate, useExisting: StandingSessions }, AttemptLimits, SessionTokens, StartSession, DeviceSessions, SignIn, RefreshSession, SetPassword],
  exports: [SessionGate, SetPassword, DeviceSessions],
})
export class SessionsModule {}
