import { createHash } from 'node:crypto';
import type { Session } from './session.js';
import { NoAnswer, Refused, type WireAnswer } from './wire.js';

/** The open protocol for resumable uploads, tus 1.0.0. */
const PROTOCOL = { 'tus-resumable': '1.0.0' };
const BYTES = 'application/offset+octet-stream';
/** So often the service may say that it stands elsewhere than this phone thinks. */
const MOST_DISAGREEMENTS = 5;

/**
 * Sends a file in pieces. Nothing of it needs to be remembered: beginning the same bytes again goes on with the upload
 * that is there, and the service says how far it is. So a phone that died between two pieces sends only the rest.
 * @param pieceSize bytes in one request; on a weak signal small ones, since what a broken request brought is kept only in part
 * @returns the id of the upload, whose bytes are all there
 * @throws NoAnswer or SignedOut; Refused when the service does not take the file
 */
export async function uploadFile(session: Session, bytes: Uint8Array<ArrayBuffer>, sha256: string, pieceSize: number): Promise<string> {
  const begun = await session.carry({ method: 'POST', path: '/v1/uploads', headers: { ...PROTOCOL, 'upload-length': String(bytes.length), 'upload-metadata': `sha256 ${Buffer.from(sha256).toString('base64')}` } });
  const { pathname } = new URL(header(begun, 'location'), 'http://service.example');
  const standing = async (): Promise<number> => offsetOf(await session.carry({ method: 'HEAD', path: pathname, headers: PROTOCOL }));
  let offset = await standing();
  for (let disagreements = 0; offset < bytes.length; ) {
    const piece = bytes.slice(offset, offset + pieceSize);
    const checksum = `sha256 ${createHash('sha256').update(piece).digest('base64')}`;
    try {
      offset = offsetOf(await session.carry({ method: 'PATCH', path: pathname, headers: { ...PROTOCOL, 'content-type': BYTES, 'upload-offset': String(offset), 'upload-checksum': checksum }, body: piece }));
    } catch (error) {
      // An earlier request whose answer was lost may still have brought its piece.
      if (!(error instanceof Refused) || error.problem.code !== 'offset-conflict' || ++disagreements > MOST_DISAGREEMENTS) throw error;
      offset = await standing();
    }
  }
  return pathname.split('/').at(-1) ?? '';
}

function offsetOf(answer: WireAnswer): number {
  return Number(header(answer, 'upload-offset'));
}

/** A page of somebody's hotel network is an answer too, but has no such header. */
function header(answer: WireAnswer, name: string): string {
  const value = answer.headers.get(name);
  if (value === null) throw new NoAnswer(`the answer has no ${name}`);
  return value;
}
