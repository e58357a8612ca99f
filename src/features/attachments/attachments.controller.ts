import { Body, Controller, Query, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ActionRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { ReasonBody } from '../jobs/index.js';
import { AttachFile } from './attach-file.js';
import { toAttachmentView } from './attachment.mapper.js';
import { AttachmentBody, AttachmentsQuery, AttachmentView } from './attachments.dto.js';
import { AttachmentsService } from './attachments.service.js';
import { ContentRoute, sendContent } from './send-content.js';
import { MEDIA_TYPES } from './uploads/upload-limits.js';

@Controller('v1/attachments')
export class AttachmentsController {
  constructor(
    private readonly attachments: AttachmentsService,
    private readonly attaching: AttachFile,
  ) {}

  @CreateRoute(AttachmentView, {
    roles: EVERYONE,
    summary: 'Attach an upload',
    description: 'To a job, a feature, a piece of equipment or a cost. One upload may be attached to several things. Unless the company keeps it, a photo comes out upright and without where, when and with what it was taken, and HEIC comes out as JPEG.',
    problems: ['checksum-mismatch'],
  })
  async create(@CurrentActor() actor: Actor, @Body() body: AttachmentBody): Promise<Reply<AttachmentView>> {
    const { row, created } = await this.attaching.execute(actor, body);
    return made(toAttachmentView(row), row.version, created);
  }

  @ListRoute(AttachmentView, { roles: EVERYONE, summary: 'List the attachments', description: 'Voided ones are listed too. Crew roles get no receipts but their own.' })
  async list(@CurrentActor() actor: Actor, @Query() query: AttachmentsQuery): Promise<Page<AttachmentView>> {
    return mapPage(await this.attachments.list(actor, query), toAttachmentView);
  }

  @ReadRoute(AttachmentView, { roles: EVERYONE, summary: 'Read what is known of an attachment' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<AttachmentView>> {
    const row = await this.attachments.find(actor, id);
    return tagged(toAttachmentView(row), row.version);
  }

  @ContentRoute({ path: ':id/content', roles: EVERYONE, types: MEDIA_TYPES, summary: 'The photo or document itself' })
  async content(@CurrentActor() actor: Actor, @IdParam() id: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply): Promise<void> {
    sendContent(request, reply, await this.attachments.content(actor, id), id);
  }

  @ContentRoute({ path: ':id/thumbnail', roles: EVERYONE, types: ['image/jpeg'], summary: 'A small picture of it', description: 'At most 320 pixels in each direction. What is no image has none.' })
  async thumbnail(@CurrentActor() actor: Actor, @IdParam() id: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply): Promise<void> {
    sendContent(request, reply, await this.attachments.thumbnail(actor, id), `${id}-small`);
  }

  @ActionRoute(AttachmentView, { path: ':id/void', roles: EVERYONE, summary: 'Void an attachment', description: 'Crew their own, the others any. It stays, but only owner and estimator get its content.' })
  async void(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: ReasonBody): Promise<Reply<AttachmentView>> {
    const row = await this.attachments.void(actor, id, body.reason);
    return tagged(toAttachmentView(row), row.version);
  }
}
