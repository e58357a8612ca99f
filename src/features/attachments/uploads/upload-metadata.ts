import { invalidInput } from '../../../platform/http/problems.js';

const SHA256 = /^[0-9a-f]{64}$/i;
const MOST_KEYS = 20;
const LONGEST_VALUE = 1000;

/**
 * The SHA-256 of the whole file, which every upload must say: the connection may break a hundred times, and nobody
 * would notice a photo with a hole in it.
 * @throws Problem 400 without it, or when more is said than can be of use
 */
export function sha256Of(metadata: Readonly<Record<string, string | null>> | undefined): Buffer {
  const entries = Object.entries(metadata ?? {});
  if (entries.length > MOST_KEYS || entries.some(([key, value]) => key.length + (value?.length ?? 0) > LONGEST_VALUE || value?.includes('\0'))) {
    throw invalidInput([{ pointer: '', detail: `Upload-Metadata must have at most ${MOST_KEYS} entries of at most ${LONGEST_VALUE} characters` }]);
  }
  const sha256 = metadata?.['sha256'] ?? '';
  if (!SHA256.test(sha256)) throw invalidInput([{ pointer: '', detail: 'Upload-Metadata must have sha256: the SHA-256 of the whole file in hexadecimal digits, in Base64 as all metadata' }]);
  return Buffer.from(sha256, 'hex');
}
