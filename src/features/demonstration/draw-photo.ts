import type { DemoPhoto } from './content/photos.js';

const WIDTH = 480;
const HEIGHT = 320;
const RIM = 1.18;

type Color = readonly [red: number, green: number, blue: number];
const GRASS: Color = [104, 136, 74];
const STONE: Color = [150, 146, 138];
const LINER: Color = [46, 48, 52];
const CLEAR: Color = [62, 112, 132];
const MURKY: Color = [104, 92, 52];
const SOIL: Color = [126, 86, 52];

/** Draws a pond from above with its rim of stones, as a JPEG; the same bytes for the same photo. */
export async function drawPhoto(photo: Pick<DemoPhoto, 'full' | 'murk' | 'torn'>): Promise<Buffer> {
  const pixels = Buffer.alloc(WIDTH * HEIGHT * 3);
  for (let y = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++) {
      const light = 1 + 0.06 * Math.sin(x / 9 + y / 5) * Math.sin(x / 23 - y / 13);
      const color = colorAt(photo, (2 * x) / WIDTH - 1, (2 * y) / HEIGHT - 1);
      for (const [channel, value] of color.entries()) pixels[(y * WIDTH + x) * 3 + channel] = Math.min(255, Math.round(value * light));
    }
  }
  // Here and not above: the library takes memory, and a service that makes no demonstration may need it for nothing.
  const { default: sharp } = await import('sharp');
  return sharp(pixels, { raw: { width: WIDTH, height: HEIGHT, channels: 3 } }).jpeg({ quality: 80 }).toBuffer();
}

/** Both coordinates from -1 to 1, the pond in the middle. */
function colorAt({ full, murk, torn }: Pick<DemoPhoto, 'full' | 'murk' | 'torn'>, x: number, y: number): Color {
  const fromMiddle = Math.hypot(x / 0.78, y / 0.74);
  if (fromMiddle > RIM) return GRASS;
  if (fromMiddle > 1) return STONE;
  if (torn && Math.abs(x - 0.55) < 0.03 + 0.02 * Math.sin(y * 30) && Math.abs(y) < 0.22) return SOIL;
  if (fromMiddle > Math.sqrt(full)) return LINER;
  const [red, green, blue] = CLEAR.map((clear, channel) => clear + ((MURKY[channel] ?? clear) - clear) * murk);
  return [red ?? 0, green ?? 0, blue ?? 0];
}
