import { Body, Controller, Post } from '@nestjs/common';
import { ApiResponse } from '@nestjs/swagger';
import { type Actor, LEADS } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { common, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { notFound } from '../../platform/http/problems.js';
import { DevicesRepository } from './devices.repository.js';
import { enrolmentPayload, enrolmentPicture } from './enrolment-code.js';
import { DeviceEnrolmentBody, DeviceEnrolmentView, NewDeviceEnrolmentView } from './enrolments.dto.js';
import { EnrolmentsRepository } from './enrolments.repository.js';
import { MakeEnrolment } from './make-enrolment.js';

@Controller('v1/device-enrolments')
export class EnrolmentsController {
  constructor(
    private readonly makeEnrolment: MakeEnrolment,
    private readonly enrolments: EnrolmentsRepository,
    private readonly devices: DevicesRepository,
  ) {}

  @Post()
  @common(
    {
      roles: LEADS,
      summary: 'Make a code for somebody\'s phone',
      description: 'For oneself, or for somebody below one\'s role; the owner for anybody. The code is shown once, is good for one phone and ten minutes, and only while the one who made it stays signed in. It replaces the person\'s code before.',
    },
    ['malformed-request', 'invalid-input', 'body-too-large', 'wrong-media-type', 'no-such-reference', 'not-possible'],
  )
  @ApiResponse({ status: 201, description: 'Made.', type: NewDeviceEnrolmentView })
  async create(@CurrentActor() actor: Actor, @Body() { personId }: DeviceEnrolmentBody): Promise<NewDeviceEnrolmentView> {
    const { id, code, expiresAt } = await this.makeEnrolment.execute(actor, personId.toLowerCase());
    const payload = enrolmentPayload(code);
    const qr = await enrolmentPicture(payload);
    return { id, personId: personId.toLowerCase(), expiresAt: expiresAt.toISOString(), deviceId: null, code, payload, qr };
  }

  @ReadRoute(DeviceEnrolmentView, { roles: LEADS, summary: 'See whether the phone has come' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<DeviceEnrolmentView> {
    const row = await this.enrolments.find(actor, id);
    if (row === null) throw notFound('device enrolment');
    const device = await this.devices.ofEnrolment(actor, id);
    return { id, personId: row.personId, expiresAt: row.expiresAt.toISOString(), deviceId: device?.id ?? null };
  }
}
