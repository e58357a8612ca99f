import { Body, Controller, Post } from '@nestjs/common';
import { ApiOperation, ApiResponse } from '@nestjs/swagger';
import { Open } from '../../platform/auth/allow.js';
import { ApiProblems } from '../../platform/http/api.js';
import { SessionView } from '../sessions/index.js';
import { DeviceSignInBody } from './devices.dto.js';
import { SignInDevice } from './sign-in-device.js';

@Controller('v1/sessions/device')
export class DeviceSessionsController {
  constructor(private readonly signInDevice: SignInDevice) {}

  @Post()
  @Open()
  @ApiOperation({ summary: 'Sign in as an enrolled device', description: 'The first session of an enrolled phone, and a new one whenever its refresh token has expired or was lost. A device has one session: the one before ends. Takes no token: the credential is the permission.' })
  @ApiResponse({ status: 201, description: 'Signed in.', type: SessionView })
  @ApiProblems(['invalid-input', 'malformed-request', 'device-unknown', 'device-revoked', 'body-too-large', 'wrong-media-type', 'unexpected', 'unavailable'])
  create(@Body() body: DeviceSignInBody): Promise<SessionView> {
    return this.signInDevice.execute(body.credential);
  }
}
