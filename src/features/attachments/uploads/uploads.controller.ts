import { Controller, Req } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { type Actor, EVERYONE } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { IdParam } from '../../../platform/http/id-param.js';
import { notFound } from '../../../platform/http/problems.js';
import type { Reply } from '../../../platform/http/reply.js';
import { UploadExchange } from './upload-exchange.js';
import { UPLOAD_DAYS } from './upload-limits.js';
import { AskRoute, BeginRoute, ContinueRoute, GiveUpRoute, StandingRoute } from './upload-routes.js';
import { UploadsRepository } from './uploads.repository.js';

const PROTOCOL = 'Resumable uploads by the open tus protocol 1.0.0 with its extensions creation, creation-with-upload, checksum, expiration and termination.';

@Controller('v1/uploads')
export class UploadsController {
  constructor(
    private readonly exchange: UploadExchange,
    private readonly uploads: UploadsRepository,
  ) {}

  @AskRoute({ roles: EVERYONE, summary: 'What the service can of the upload protocol', description: PROTOCOL })
  ask(@CurrentActor() actor: Actor, @Req() request: FastifyRequest): Promise<Reply<undefined>> {
    return this.exchange.answer(actor, request);
  }

  @BeginRoute({ roles: EVERYONE, summary: 'Begin to send a file', description: `${PROTOCOL} JPEG up to 20 MiB and 64 million pixels, HEIC up to 20 MiB and 50 million pixels, PNG and WebP up to 20 MiB and 128 MiB unpacked, PDF up to 10 MiB. An upload is kept for ${UPLOAD_DAYS} days; attach it within them.` })
  begin(@CurrentActor() actor: Actor, @Req() request: FastifyRequest): Promise<Reply<undefined>> {
    return this.exchange.answer(actor, request);
  }

  @StandingRoute({ roles: EVERYONE, summary: 'How much of a file is here' })
  standing(@CurrentActor() actor: Actor, @IdParam() id: string, @Req() request: FastifyRequest): Promise<Reply<undefined>> {
    return this.answerOwn(actor, id, request);
  }

  @ContinueRoute({ roles: EVERYONE, summary: 'Send more of a file', description: 'On a weak connection send pieces of a megabyte or less: a request may take one minute. What came of a piece whose connection was lost is kept.' })
  continue(@CurrentActor() actor: Actor, @IdParam() id: string, @Req() request: FastifyRequest): Promise<Reply<undefined>> {
    return this.answerOwn(actor, id, request);
  }

  @GiveUpRoute({ roles: EVERYONE, summary: 'Give an upload up' })
  giveUp(@CurrentActor() actor: Actor, @IdParam() id: string, @Req() request: FastifyRequest): Promise<Reply<undefined>> {
    return this.answerOwn(actor, id, request);
  }

  /** Somebody else's upload, and none, answer alike, whatever else is wrong with the request. */
  private async answerOwn(actor: Actor, id: string, request: FastifyRequest): Promise<Reply<undefined>> {
    if ((await this.uploads.find(actor, id)) === null) throw notFound('upload of yours');
    return this.exchange.answer(actor, request);
  }
}
