import sharp from 'sharp';
import type { Random } from './random.js';

const SIZE = { width: 96, height: 72, channels: 3 } as const;

/** Photos of nothing, each its own: noise does not get small, so each takes several pieces. */
export async function drawPictures(count: number, random: Random): Promise<Buffer[]> {
  const pictures: Buffer[] = [];
  for (let n = 0; n < count; n++) {
    const noise = Uint8Array.from({ length: SIZE.width * SIZE.height * SIZE.channels }, () => random.between(0, 255));
    pictures.push(await sharp(noise, { raw: SIZE }).jpeg().toBuffer());
  }
  return pictures;
}
