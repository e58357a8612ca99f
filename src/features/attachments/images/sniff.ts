import { notPossible } from '../../../platform/http/problems.js';
import { Problem } from '../../../platform/http/problem.js';
import { MEDIA_TYPES, MOST_BYTES, type MediaType } from '../uploads/upload-limits.js';

/**
 * What the bytes are, by the bytes themselves: a name or a declared type may say anything.
 * @throws Problem 415 for what may not be attached, 422 for more bytes than its type may have
 */
export async function sniffed(bytes: Buffer): Promise<MediaType> {
  const { fileTypeFromBuffer } = await import('file-type');
  const found = (await fileTypeFromBuffer(bytes))?.mime ?? null;
  // The container alone, without its codec; decoding will tell whether it is the one.
  const type = MEDIA_TYPES.find((one) => one === (found === 'image/heif' ? 'image/heic' : found));
  if (type === undefined) throw new Problem('wrong-media-type', `The file is ${found ?? 'of no type that could be recognised'}; it must be one of ${MEDIA_TYPES.join(', ')}.`);
  if (bytes.length > MOST_BYTES[type]) throw notPossible(`The file has ${bytes.length} bytes; ${type} may have at most ${MOST_BYTES[type]}. Make it smaller.`);
  return type;
}
