import sharp from 'sharp';

const WIDTH = 4000;
const HEIGHT = 3000;
const CHANNELS = 3;
/** Of the picture's noise; about four megabytes come of it. */
const GRAIN = 58;

/** Photos of 12 million pixels and about 4 MB, as a phone makes them, no two of the same bytes. */
export async function photos(count: number): Promise<Buffer[]> {
  const pixels = Buffer.alloc(WIDTH * HEIGHT * CHANNELS);
  for (let at = 0; at < pixels.length; at++) pixels[at] = 110 + 60 * Math.sin(at / 90_000) + GRAIN * (((at * 2_654_435_761) % 4_096) / 4_096);
  const made: Buffer[] = [];
  for (let i = 0; i < count; i++) {
    pixels.fill(i, 0, CHANNELS * WIDTH);
    made.push(await sharp(pixels, { raw: { width: WIDTH, height: HEIGHT, channels: CHANNELS } }).jpeg({ quality: 90 }).toBuffer());
  }
  return made;
}
