import { constants } from 'node:zlib';
import compress from '@fastify/compress';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';

/** Below this an answer fits a packet anyway, and the work of both ends is for nothing. */
const WORTH_IT_BYTES = 1024;
/** Of 11; the library's 4 already, named here because Node's own default of 11 takes a hundred times as long. */
const BROTLI_QUALITY = 4;
/** Beside reads, what a phone pushes gets an answer of hundreds of items. */
const LONG_ANSWERS = /^\/v1\/sync\//;
const TEXTS = /^(application\/(.+\+)?json|text\/(csv|calendar|html|css|javascript)|application\/javascript|image\/svg\+xml)\b/;

/**
 * Compresses long answers of reads and of the sync. An attacker who can have a secret compressed together with text of
 * their own choice, again and again, reads the secret from the lengths; so no answer that holds a token or a code is
 * ever compressed: these all answer to a POST outside the sync. Reads need a token in a header, which no page of
 * somebody else's can make a browser send.
 * Compressed requests are not taken: a small one can unpack to more than the service has memory for.
 */
export async function addCompression(app: NestFastifyApplication): Promise<void> {
  const fastify = app.getHttpAdapter().getInstance();
  fastify.addHook('onRoute', (route) => {
    const reads = [route.method].flat().every((method) => method === 'GET' || method === 'HEAD');
    if (!reads && !LONG_ANSWERS.test(route.url)) route.compress = false;
  });
  await app.register(compress, {
    globalDecompression: false,
    threshold: WORTH_IT_BYTES,
    encodings: ['br', 'gzip'],
    customTypes: TEXTS,
    brotliOptions: { params: { [constants.BROTLI_PARAM_MODE]: constants.BROTLI_MODE_TEXT, [constants.BROTLI_PARAM_QUALITY]: BROTLI_QUALITY } },
  });
}
