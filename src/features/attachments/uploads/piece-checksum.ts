import { createHash, type Hash } from 'node:crypto';
import { Problem } from '../../../platform/http/problem.js';

/** As the protocol's header Tus-Checksum-Algorithm lists them; it asks for SHA-1 of every server. */
export const CHECKSUM_ALGORITHMS = ['sha256', 'sha1'];

/** The checksum of one request's bytes, which its sender may give. */
export class PieceChecksum {
  private readonly hash: Hash;

  private constructor(
    algorithm: string,
    private readonly said: Buffer,
  ) {
    this.hash = createHash(algorithm);
  }

  /** @throws Problem 400 for a header that is none, or of another algorithm */
  static from(header: string | string[] | undefined): PieceChecksum | null {
    if (header === undefined) return null;
    const [algorithm, base64] = String(header).split(' ');
    if (algorithm === undefined || base64 === undefined || !CHECKSUM_ALGORITHMS.includes(algorithm)) {
      throw new Problem('malformed-request', `Upload-Checksum must be an algorithm (${CHECKSUM_ALGORITHMS.join(', ')}), a space, and the checksum in Base64.`);
    }
    return new PieceChecksum(algorithm, Buffer.from(base64, 'base64'));
  }

  update(bytes: Buffer): void {
    this.hash.update(bytes);
  }

  /** Asked once, when all bytes have come. */
  matches(): boolean {
    return this.hash.digest().equals(this.said);
  }
}
