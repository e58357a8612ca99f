import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';

/** The parts of a refresh token or a device's credential: where to look it up, and the secret that proves it. */
export interface SecretToken {
  readonly companyId: string;
  readonly id: string;
  readonly secret: Buffer;
}

export const SECRET_BYTES = 32;
const BYTES = 16 + 16 + SECRET_BYTES;

export function newSecretToken(companyId: string): SecretToken {
  return { companyId, id: uuidv7(), secret: randomBytes(SECRET_BYTES) };
}

/** The company stands in the token, so that it can be looked up under row-level security. */
export function encodeSecretToken({ companyId, id, secret }: SecretToken): string {
  return Buffer.concat([uuidBytes(companyId), uuidBytes(id), secret]).toString('base64url');
}

/** The parts of a token, or null for what is none. */
export function decodeSecretToken(token: string): SecretToken | null {
  const bytes = Buffer.from(token, 'base64url');
  if (bytes.length !== BYTES || bytes.toString('base64url') !== token) return null;
  return { companyId: uuidText(bytes.subarray(0, 16)), id: uuidText(bytes.subarray(16, 32)), secret: bytes.subarray(32) };
}

/** A plain digest is enough for 256 random bits: there is nothing to guess. */
export function hashSecret(secret: Buffer): Buffer {
  return createHash('sha256').update(secret).digest();
}

export function sameSecret(secret: Buffer, hash: Buffer): boolean {
  return timingSafeEqual(hashSecret(secret), hash);
}

function uuidBytes(uuid: string): Buffer {
  return Buffer.from(uuid.replaceAll('-', ''), 'hex');
}

function uuidText(bytes: Buffer): string {
  return bytes.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
