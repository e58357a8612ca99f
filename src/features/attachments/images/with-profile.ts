const START_BYTES = 2;
const SIGNATURE = Buffer.from('ICC_PROFILE\0', 'latin1');
const MOST_DATA = 0xffff - 2 - SIGNATURE.length - 2;
const MOST_CHUNKS = 255;

/**
 * A JPEG file with this color profile; the image library keeps the one of its input, and raw pixels have none.
 * @param jpeg begins with its JFIF segment
 * @returns the file without it for a profile that is larger than the format allows
 * @see ICC.1:2022 (ISO 15076-1), B.4 "Embedding ICC profiles in JFIF files"
 */
export function withProfile(jpeg: Buffer, profile: Buffer): Buffer {
  const count = Math.ceil(profile.length / MOST_DATA);
  if (count > MOST_CHUNKS) return jpeg;
  const segments = Array.from({ length: count }, (_, i) => {
    const data = profile.subarray(i * MOST_DATA, (i + 1) * MOST_DATA);
    const head = Buffer.from([0xff, 0xe2, 0, 0]);
    head.writeUInt16BE(2 + SIGNATURE.length + 2 + data.length, 2);
    return [head, SIGNATURE, Buffer.from([i + 1, count]), data];
  });
  // After the first segment, which must come first: its marker of two bytes, then its length.
  const first = START_BYTES + 2 + jpeg.readUInt16BE(START_BYTES + 2);
  return Buffer.concat([jpeg.subarray(0, first), ...segments.flat(), jpeg.subarray(first)]);
}
