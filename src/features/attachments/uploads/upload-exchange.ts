import { Injectable } from '@nestjs/common';
import { Server } from '@tus/server';
import type { FastifyRequest } from 'fastify';
import type { Actor } from '../../../platform/auth/actor.js';
import { isStreamed } from '../../../platform/http/streamed-body.js';
import { Reply } from '../../../platform/http/reply.js';
import { BeginUpload } from './begin-upload.js';
import { FinishUpload } from './finish-upload.js';
import { CHECKSUM_ALGORITHMS, PieceChecksum } from './piece-checksum.js';
import { PieceStore } from './piece-store.js';
import { RequestBody } from './request-body.js';
import { UploadLocks } from './upload-locks.js';
import { LARGEST_UPLOAD } from './upload-limits.js';
import { fromProtocol } from './upload-problems.js';
import { UploadsRepository } from './uploads.repository.js';

export const UPLOADS_PATH = '/v1/uploads';
/** A request on a dead connection gets this long to keep what it has, when its phone is back on another one. */
const LONGEST_DRAIN_MS = 500;

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
    const server = this.serverFor(actor, request, (error) => (failure = error));
    const body = isStreamed(request) ? new RequestBody(request.raw) : null;
    // A failure leaves the rest of the body unread.
    const response = await server.handleWeb(webRequest(request, body)).finally(() => body?.discardRest());
    if (response.status < 400) return new Reply(undefined, response.status, headersOf(response));
    // The library's own failures are plain objects with a status; anything else was thrown by us or by the database.
    if (failure !== null && typeof (failure as { status_code?: unknown }).status_code !== 'number') throw failure as Error;
    throw fromProtocol(response.status, await response.text());
  }

  /** One for each request, since it is the actor's: the store shows this person's uploads alone. */
  private serverFor(actor: Actor, request: FastifyRequest, onFailure: (error: unknown) => void): Server {
    const begun = this.beginning.forActor(actor);
    return new Server({
      path: UPLOADS_PATH,
      relativeLocation: true,
      datastore: new PieceStore(actor, this.uploads, PieceChecksum.from(request.headers['upload-checksum']), (upload) => begun.make(upload)),
      locker: this.locks,
      lockDrainTimeout: LONGEST_DRAIN_MS,
      maxSize: LARGEST_UPLOAD,
      namingFunction: (_request, metadata) => begun.idFor(metadata, Number(request.headers['upload-length'])),
      onUploadFinish: async (_request, { id }) => {
        await this.finishing.execute(actor, id);
        return {};
      },
      onResponseError: (_request, error) => {
        onFailure(error);
        return undefined;
      },
    });
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
