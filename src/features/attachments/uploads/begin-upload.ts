import { Injectable } from '@nestjs/common';
import type { Upload } from '@tus/server';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../../platform/auth/actor.js';
import { Problem } from '../../../platform/http/problem.js';
import { invalidInput, stateConflict } from '../../../platform/http/problems.js';
import { LARGEST_UPLOAD, MOST_OPEN_UPLOADS, MOST_WAITING_BYTES } from './upload-limits.js';
import { sha256Of } from './upload-metadata.js';
import { UploadsRepository } from './uploads.repository.js';

type Metadata = Record<string, string | null>;

/** The beginning of one upload, in the two steps in which the protocol's library asks for it. */
export interface Beginning {
  /** @throws Problem 400 for metadata or a length that can't be right, 413 for more than any file may have */
  idFor(metadata: Metadata | undefined, size: number): Promise<string>;
  /** @throws Problem 409 when the person has too much that is unfinished or attached to nothing */
  make(upload: Upload): Promise<{ resumes: boolean }>;
}

/** Begins an upload, or goes on with the one that the person began with the same bytes: a creation may be repeated. */
@Injectable()
export class BeginUpload {
  constructor(private readonly uploads: UploadsRepository) {}

  forActor(actor: Actor): Beginning {
    let resumes = false;
    return {
      idFor: async (metadata, size) => {
        const sha256 = sha256Of(metadata);
        requireSize(size);
        const before = await this.uploads.findSame(actor, sha256, size);
        resumes = before !== null;
        return before?.id ?? uuidv7();
      },
      make: async ({ id, size, metadata }) => {
        if (resumes) return { resumes };
        // Here and not on a timer: where nothing is uploaded, nothing piles up.
        await this.uploads.removeExpired(actor);
        const waiting = await this.uploads.waiting(actor);
        if (waiting.open >= MOST_OPEN_UPLOADS) throw stateConflict(`You have ${MOST_OPEN_UPLOADS} unfinished uploads. Finish some, or end them with DELETE.`);
        if (waiting.bytes + (size ?? 0) > MOST_WAITING_BYTES) throw stateConflict(`You have ${waiting.bytes} bytes of uploads that are attached to nothing; with this one there would be more than ${MOST_WAITING_BYTES}. Attach some, or end them with DELETE.`);
        await this.uploads.insert(actor, { id, personId: signedIn(actor), size: size ?? 0, sha256: sha256Of(metadata), metadata: metadata ?? {} });
        return { resumes };
      },
    };
  }
}

function requireSize(size: number): void {
  if (!Number.isInteger(size) || size <= 0) throw invalidInput([{ pointer: '', detail: 'Upload-Length must be the number of bytes of the file, 1 or more' }]);
  if (size > LARGEST_UPLOAD) throw new Problem('body-too-large', `The file has ${size} bytes; no file may have more than ${LARGEST_UPLOAD}. Make it smaller.`);
}

function signedIn({ personId }: Actor): string {
  if (personId === null) throw new Error('The service itself uploads nothing.');
  return personId;
}
