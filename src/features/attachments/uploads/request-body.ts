import type { IncomingMessage } from 'node:http';
import { PassThrough, Readable } from 'node:stream';

/** The bytes of a request, for somebody who may stop reading before the last of them. */
export class RequestBody {
  private readonly passed = new PassThrough();

  constructor(private readonly request: IncomingMessage) {
    // A pipe hands no failure on, and whoever waits for the next byte would wait for ever.
    request.once('error', (error) => this.passed.destroy(error));
    request.pipe(this.passed);
  }

  stream(): ReadableStream<Uint8Array> {
    return Readable.toWeb(this.passed) as ReadableStream<Uint8Array>;
  }

  /**
   * Reads and forgets what nobody wants. The platform does so for a body that was never touched; one that was begun
   * would block its connection, and the client's next request on it would get no answer.
   */
  discardRest(): void {
    this.request.unpipe(this.passed);
    this.request.resume();
  }
}
