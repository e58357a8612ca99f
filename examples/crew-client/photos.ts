import type { AttachmentBody, Mutation, Outcome } from './contract.js';

/** A picture or another file that was taken down. Its bytes lie in a file of the phone until the service has them. */
export interface Photo {
  /** That of the mutation which attaches it. */
  readonly id: string;
  readonly recordedAt: string;
  readonly body: AttachmentBody;
  /** Of its bytes, in hexadecimal digits. */
  readonly sha256: string;
  readonly dependsOn?: readonly string[];
  /** Where its bytes are at the service; null until they are. */
  readonly uploadId: string | null;
}

export type PhotoRecord =
  | { readonly event: 'photo-taken'; readonly photo: Photo }
  | { readonly event: 'photo-sent'; readonly id: string; readonly uploadId: string }
  | { readonly event: 'photo-again'; readonly id: string; readonly newId: string }
  | { readonly event: 'photo-refused'; readonly outcome: Outcome };

/** The photos that are not known to be attached yet. */
export class Photos {
  private readonly byId = new Map<string, Photo>();

  all(): Photo[] {
    return [...this.byId.values()];
  }

  get(id: string): Photo | undefined {
    return this.byId.get(id);
  }

  take(photo: Photo): void {
    this.byId.set(photo.id, photo);
  }

  drop(id: string): void {
    this.byId.delete(id);
  }

  /** The bytes are there, so now the mutation can be sent. @returns it */
  sent(id: string, uploadId: string, counter: number): Mutation {
    this.take({ ...this.require(id), uploadId });
    return this.mutation(id, counter);
  }

  /**
   * The upload is gone, as it is a week after it was made: the bytes must be sent anew. Its mutation was refused for
   * good, so the next one is another one.
   */
  again(id: string, newId: string): void {
    const photo = this.require(id);
    this.drop(id);
    this.take({ ...photo, id: newId, uploadId: null });
  }

  mutation(id: string, counter: number): Mutation {
    const { recordedAt, body, dependsOn, uploadId } = this.require(id);
    return { id, counter, kind: 'attachment.add', recordedAt, body: uploadId === null ? body : { ...body, uploadId }, ...(dependsOn === undefined ? {} : { dependsOn }) };
  }

  private require(id: string): Photo {
    const photo = this.byId.get(id);
    if (photo === undefined) throw new Error(`There is no photo ${id}.`);
    return photo;
  }
}
