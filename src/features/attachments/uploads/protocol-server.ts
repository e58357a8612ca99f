import { Server, type ServerOptions } from '@tus/server';
import type { Actor } from '../../../platform/auth/actor.js';
import type { Beginning } from './begin-upload.js';
import type { PieceChecksum } from './piece-checksum.js';
import { PieceStore } from './piece-store.js';
import { LARGEST_UPLOAD } from './upload-limits.js';
import type { UploadsRepository } from './uploads.repository.js';

/** A request on a dead connection gets this long to keep what it has, when its phone is back on another one. */
const LONGEST_DRAIN_MS = 500;

export interface UploadRequest {
  readonly actor: Actor;
  readonly path: string;
  readonly length: number;
  readonly checksum: PieceChecksum | null;
  readonly beginning: Beginning;
  readonly locker: NonNullable<ServerOptions['locker']>;
  finish(id: string): Promise<unknown>;
  fail(error: unknown): void;
}

/** One for each request, since it is the actor's: the store shows this person's uploads alone. */
export function protocolServer(uploads: UploadsRepository, request: UploadRequest): Server {
  const { actor, path, length, checksum, beginning, locker } = request;
  return new Server({
    path,
    relativeLocation: true,
    datastore: new PieceStore(actor, uploads, checksum, (upload) => beginning.make(upload)),
    locker,
    lockDrainTimeout: LONGEST_DRAIN_MS,
    maxSize: LARGEST_UPLOAD,
    namingFunction: (_request, metadata) => beginning.idFor(metadata, length),
    onUploadFinish: async (_request, { id }) => {
      await request.finish(id);
      return {};
    },
    onResponseError: (_request, error) => {
      request.fail(error);
      return undefined;
    },
  });
}
