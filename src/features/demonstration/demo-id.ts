import { createHash } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';

/**
 * The id that a client would have chosen for a thing at that moment: a UUIDv7 whose random part comes from a name, so
 * that a demonstration made twice on the same day is the same to the last digit.
 */
export function demoId(moment: Date, name: string): string {
  const random = createHash('sha256').update(`rillbook demonstration ${name}`).digest();
  return uuidv7({ msecs: moment.getTime(), random: random.subarray(0, 16), seq: random.readUInt32BE(16) >>> 1 });
}
