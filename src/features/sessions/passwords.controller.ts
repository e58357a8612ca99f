import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiBearerAuth, ApiOperation, ApiParam, ApiResponse } from '@nestjs/swagger';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { Allow, CurrentActor } from '../../platform/auth/allow.js';
import { ApiProblems } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { PasswordBody } from './passwords.dto.js';
import { SetPassword } from './set-password.js';

@Controller('v1/people')
export class PasswordsController {
  constructor(private readonly setPassword: SetPassword) {}

  @Post(':id/password')
  @HttpCode(204)
  @Allow(EVERYONE)
  @ApiBearerAuth()
  @ApiOperation({ summary: 'Set a password', description: 'One\'s own with the present one; the owner sets anybody\'s. The person is signed out everywhere; enrolled devices sign in again by themselves until they are revoked.' })
  @ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' }, description: 'The person.' })
  @ApiResponse({ status: 204, description: 'Set.' })
  @ApiProblems(['invalid-input', 'malformed-request', 'body-too-large', 'wrong-media-type', 'not-signed-in', 'session-ended', 'device-revoked', 'not-allowed', 'not-found', 'too-many-attempts', 'unexpected', 'unavailable'])
  async set(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: PasswordBody): Promise<void> {
    await this.setPassword.execute(actor, id, body);
  }
}
