import { Injectable } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import type { Actor } from '../../../platform/auth/actor.js';
import { isStreamed } from '../../../platform/http/streamed-body.js';
import { Reply } from '../../../platform/http/reply.js';
import { BeginUpload } from './begin-upload.js';
import { FinishUpload } from './finish-upload.js';
import { CHECKSUM_ALGORITHMS, PieceChecksum } from './piece-checksum.js';
import { RequestBody } from './request-body.js';
import { UploadLocks } from './upload-locks.js';
import { fromProtocol } from './upload-problems.js';
import { UploadsRepository } from './uploads.repository.js';

export const UPLOADS_PATH = '/v1/uploads';

/**
 * Lets the protocol's library answer a request. Everything else about it stays as on every other route: the guard
 * lets it in, problems are problems, the headers are ours.
 */
@Injectable()
export class UploadExchange {
  private readonly locks = new UploadLocks();

  constructor(
    private readonly uploads: UploadsRepository,
    private readonly beginning: BeginUpload,
    private readonly finishing: FinishUpload,
  ) {}

  /** @throws Problem as the protocol's statuses say, and what beginning and finishing an upload throw */
  async answer(actor: Actor, request: FastifyRequest): Promise<Reply<undefined>> {
    let failure: unknown = null;
    // With the first upload: the library and what it needs take 17 MiB.
    const { protocolServer } = await import('./protocol-server.js');
    const server = protocolServer(this.uploads, {
      actor,
      path: UPLOADS_PATH,
      length: Number(request.headers['upload-length']),
      checksum: PieceChecksum.from(request.headers['upload-checksum']),
      beginning: this.beginning.forActor(actor),
      locker: this.locks,
      finish: (id) => this.finishing.execute(actor, id),
      fail: (error) => (failure = error),
    });
    const body = isStreamed(request) ? new RequestBody(request.raw) : null;
    // A failure leaves the rest of the body unread.
    const response = await server.handleWeb(webRequest(request, body)).finally(() => body?.discardRest());
    if (response.status < 400) return new Reply(undefined, response.status, headersOf(response));
    // The library's own failures are plain objects with a status; anything else was thrown by us or by the database.
    if (failure !== null && typeof (failure as { status_code?: unknown }).status_code !== 'number') throw failure as Error;
    throw fromProtocol(response.status, await response.text());
  }
}

function webRequest({ headers: given, url, method }: FastifyRequest, body: RequestBody | null): Request {
  const headers = new Headers();
  for (const [name, value] of Object.entries(given)) if (value !== undefined) headers.set(name, String(value));
  // Without what follows a question mark: the library takes whatever comes last for the id.
  const [path = ''] = url.split('?');
  return new Request(new URL(path, 'http://here'), { method, headers, ...(body === null ? {} : { body: body.stream(), duplex: 'half' as const }) });
}

/** Without the library's permissions for pages of other origins, which no route here gives. */
function headersOf(response: Response): Record<string, string> {
  const headers = Object.fromEntries([...response.headers].filter(([name]) => !name.startsWith('access-control-') && name !== 'content-length' && name !== 'content-type'));
  return 'tus-extension' in headers ? { ...headers, 'tus-checksum-algorithm': CHECKSUM_ALGORITHMS.join(',') } : headers;
}
