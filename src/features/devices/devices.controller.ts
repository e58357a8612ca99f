import { Body, Controller, Post, Query, Req } from '@nestjs/common';
import { ApiOperation, ApiResponse } from '@nestjs/swagger';
import type { FastifyRequest } from 'fastify';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { CurrentActor, Open } from '../../platform/auth/allow.js';
import { ActionRoute, ApiProblems, ChangeRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { made, type Reply, taggedBySaying } from '../../platform/http/reply.js';
import type { DeviceEntity } from './device.entity.js';
import { toDeviceView } from './device.mapper.js';
import { DeviceBody, DeviceNameBody, DeviceRevocationBody, DevicesQuery, DeviceView, EnrolledDeviceView } from './devices.dto.js';
import { onlyPerson, requireMaySee } from './devices.policy.js';
import { DevicesRepository } from './devices.repository.js';
import { EnrolDevice } from './enrol-device.js';
import { RenameDevice } from './rename-device.js';
import { RevokeDevice } from './revoke-device.js';

@Controller('v1/devices')
export class DevicesController {
  constructor(
    private readonly devices: DevicesRepository,
    private readonly enrolDevice: EnrolDevice,
    private readonly renameDevice: RenameDevice,
    private readonly revokeDevice: RevokeDevice,
  ) {}

  @Post()
  @Open()
  @ApiOperation({ summary: 'Enrol a phone with a code', description: 'Takes no token: the code is the permission. A request whose answer was lost is sent again unchanged. Wrong codes are limited by address.' })
  @ApiResponse({ status: 201, description: 'Enrolled.', type: EnrolledDeviceView })
  @ApiResponse({ status: 200, description: 'The same was sent before; this is what that made.', type: EnrolledDeviceView })
  @ApiProblems(['invalid-input', 'malformed-request', 'enrolment-refused', 'id-taken', 'already-there', 'too-many-attempts', 'body-too-large', 'wrong-media-type', 'unexpected', 'unavailable'])
  async enrol(@Body() body: DeviceBody, @Req() request: FastifyRequest): Promise<Reply<EnrolledDeviceView>> {
    const { row, created, credential } = await this.enrolDevice.execute(body, request.ip);
    return made({ ...toDeviceView(row), credential }, row.version, created);
  }

  @ListRoute(DeviceView, { roles: EVERYONE, summary: 'List the devices', description: 'Crew see their own.' })
  async list(@CurrentActor() actor: Actor, @Query() query: DevicesQuery): Promise<Page<DeviceView>> {
    const only = onlyPerson(actor);
    if (only !== undefined && query.personId !== undefined && query.personId.toLowerCase() !== only) return { items: [], nextCursor: null };
    return mapPage(await this.devices.list(actor, query, only ?? query.personId), toDeviceView);
  }

  @ReadRoute(DeviceView, { roles: EVERYONE, summary: 'Read a device' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<DeviceView>> {
    const row = await this.devices.find(actor, id);
    requireMaySee(actor, row);
    return answer(row);
  }

  @ChangeRoute(DeviceNameBody, DeviceView, { roles: EVERYONE, summary: 'Rename a device', description: 'One\'s own, or that of somebody below one\'s role; the owner anybody\'s. In If-Match the ETag counts for the name and the revocation: when it was last seen may change.' })
  async rename(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<DeviceView>> {
    return answer(await this.renameDevice.execute(actor, id, version, patch));
  }

  @ActionRoute(DeviceView, {
    path: ':id/revoke',
    roles: EVERYONE,
    summary: 'Shut a device out for good',
    description: 'One\'s own, or that of somebody below one\'s role; the owner anybody\'s. Within seconds nothing is read by it and nothing taken from it; calendar feeds that were made on it end; its requests are answered 401 `device-revoked`. A phone that is found again is enrolled anew.',
  })
  async revoke(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: DeviceRevocationBody): Promise<Reply<DeviceView>> {
    return answer(await this.revokeDevice.execute(actor, id, body.reason ?? 'revoked'));
  }
}

/** The tag covers when it was last seen, which the version does not count: else a phone at work could not be renamed. */
function answer(row: DeviceEntity): Reply<DeviceView> {
  return taggedBySaying(toDeviceView(row), row.version);
}
