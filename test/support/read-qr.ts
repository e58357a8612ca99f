import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

const SVG = 'VipsForeignLoadSvgBuffer';

/**
 * What a camera reads from the picture of a QR code: drawn from its SVG, held askew and out of focus, and decoded by a
 * library that shares nothing with the one that made it.
 * @param svg the picture
 * @param askew in degrees
 * @returns the texts of all codes found
 */
export async function readQr(svg: string, askew: number): Promise<string[]> {
  const wasm = await readFile(fileURLToPath(import.meta.resolve('zxing-wasm/reader/zxing_reader.wasm')));
  await prepareZXingModule({ overrides: { wasmBinary: new Uint8Array(wasm).buffer }, fireImmediately: true });
  // The service has the image library refuse SVG, for the whole process: so it does again for the tests that follow.
  sharp.unblock({ operation: [SVG] });
  const photo = await sharp(Buffer.from(svg)).resize(300, 300, { kernel: 'nearest' }).rotate(askew, { background: '#888888' }).blur(1).png().toBuffer();
  sharp.block({ operation: [SVG] });
  const found = await readBarcodes(new Uint8Array(photo), { formats: ['QRCode'], maxNumberOfSymbols: 4 });
  return found.map(({ text }) => text);
}
