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
  @ApiOperation({ summary: 'Sign in as an enrolled device', description: 'A device has one session: the one before ends. For a phone whose refresh token expired or was lost.' })
  @ApiResponse({ status: 201, description: 'Signed in.', type: SessionView })
  @ApiProblems(['invalid-input', 'malformed-request', 'device-unknown', 'device-revoked', 'body-too-large', 'wrong-media-type', 'unexpected', 'unavailable'])
  create(@Body() body: DeviceSignInBody): Promise<SessionView> {
    return this.signInDevice.execute(body.credential);
  }
}
