import type { PhoneStore } from './phone-store.js';
import type { PhotoFiles } from './photo-files.js';
import type { Photo } from './photos.js';
import type { Session } from './session.js';
import { uploadFile } from './upload.js';
import { NoAnswer, Refused } from './wire.js';

/** The service looked at the file, or at what was said of it, and will not take it however often it comes. */
const FOR_GOOD = [400, 413, 415, 422];
/** The upload was given up or is too old, or what arrived is not what was sent: begin anew. */
const ANEW = [404, 410, 460];

/**
 * Brings the bytes of photos to the service, one after the other, and queues the mutation that attaches each.
 * @returns how many are there now @throws NoAnswer, Refused or SignedOut; what is there stays there
 */
export async function sendPhotos(store: PhoneStore, files: PhotoFiles, session: Session, pieceSize: number): Promise<number> {
  let sent = 0;
  for (const photo of unsentPhotos(store)) {
    const bytes = files.read(photo.sha256);
    if (bytes === null) {
      refuse(store, photo, { status: 0, code: 'file-damaged', detail: 'The file on the phone is gone or damaged.' });
      continue;
    }
    try {
      store.write({ event: 'photo-sent', id: photo.id, uploadId: await uploadFile(session, bytes, photo.sha256, pieceSize) });
      sent++;
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      if (ANEW.includes(error.status)) throw new NoAnswer('the upload must begin anew', { cause: error });
      if (!FOR_GOOD.includes(error.status)) throw error;
      refuse(store, photo, error.problem);
    }
  }
  return sent;
}

/** Those whose bytes must still be sent. */
export function unsentPhotos({ state }: PhoneStore): Photo[] {
  return state.photos.all().filter(({ id, uploadId }) => uploadId === null && !state.troubles.has(id));
}

function refuse(store: PhoneStore, { id }: Photo, problem: Refused['problem']): void {
  store.write({ event: 'photo-refused', outcome: { id, outcome: 'rejected', problem, final: true } });
}
