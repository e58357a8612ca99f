import { parentPort, workerData } from 'node:worker_threads';
import libheif from 'libheif-js/wasm-bundle.js';

/**
 * Decodes one HEIC picture, tells its pixels and ends. The decoder turns it upright by what the format itself says.
 * `workerData`: the bytes, the most pixels of a picture, the most bytes of memory that the decoder may take.
 */
const { bytes, mostPixels, mostBytes } = workerData;
const PAGE_BYTES = 65_536;

// A file may say that it is small, and take all there is when it is unpacked.
const { grow } = WebAssembly.Memory.prototype;
WebAssembly.Memory.prototype.grow = function growWithin(pages) {
  if (this.buffer.byteLength + pages * PAGE_BYTES > mostBytes) throw new RangeError('The picture takes too much memory.');
  return grow.call(this, pages);
};

const pictures = new libheif.HeifDecoder().decode(bytes);
const picture = pictures.find((one) => one.is_primary()) ?? pictures[0];
if (picture === undefined) throw new Error('There is no picture.');
const [width, height] = [picture.get_width(), picture.get_height()];
if (width * height > mostPixels) {
  parentPort.postMessage({ width, height, pixels: null });
} else {
  const pixels = { data: new Uint8ClampedArray(width * height * 4), width, height };
  picture.display(pixels, (decoded) => {
    if (decoded === null) throw new Error('The picture is broken.');
    parentPort.postMessage({ width, height, pixels: decoded.data.buffer }, [decoded.data.buffer]);
  });
}
