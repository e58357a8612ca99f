import type { Mutation } from './contract.js';
import type { PhoneStore } from './phone-store.js';
import type { PhotoFiles } from './photo-files.js';
import type { Photo } from './photos.js';

/** What a phone has not handed in, as plain JSON: for a file, a cable, or whatever leads to another phone. */
export interface HandedOut {
  readonly clientId: string;
  readonly mutations: readonly Mutation[];
  readonly photos: readonly (Photo & { readonly base64: string | null })[];
}

export function handOut({ state }: PhoneStore, files: PhotoFiles): HandedOut {
  const photos = state.photos.all().filter(({ id }) => !state.troubles.has(id));
  return {
    clientId: state.clientId,
    mutations: [...state.waiting.values()],
    photos: photos.map((photo) => ({ ...photo, base64: base64Of(files.read(photo.sha256)) })),
  };
}

/**
 * Takes over what another phone handed out. The ids stay, so whatever the service has already is a repetition to it,
 * and it makes no difference if both phones send it. Only the counters are this phone's.
 */
export function takeOver(store: PhoneStore, files: PhotoFiles, { mutations, photos }: HandedOut): void {
  const { state } = store;
  for (const { base64, ...photo } of photos) {
    if (base64 !== null) files.keep(Buffer.from(base64, 'base64'));
    if (state.photos.get(photo.id) === undefined) store.write({ event: 'photo-taken', photo });
  }
  const fresh = mutations.filter(({ id }) => !state.waiting.has(id));
  if (fresh.length > 0) store.write({ event: 'queued', mutations: fresh.map((mutation, index) => ({ ...mutation, counter: state.lastCounter + index + 1 })) });
}

function base64Of(bytes: Uint8Array | null): string | null {
  return bytes === null ? null : Buffer.from(bytes).toString('base64');
}
