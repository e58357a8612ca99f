import { createHash, randomBytes } from 'node:crypto';

/** Without I, L, O and U: what looks alike, or spells something, can't be misread from a screen in the sun. */
const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const CHARACTERS = 16;
const SCHEME = 'RILLBOOK:DEVICE/';

/**
 * A code of 80 random bits in four groups of four. So many can't be guessed in its ten minutes, and a hash without a
 * salt keeps it; yet it can be typed where a camera is broken.
 */
export function newEnrolmentCode(): string {
  // 256 is a multiple of 32, so the remainder favors no character.
  const characters = [...randomBytes(CHARACTERS)].map((byte) => ALPHABET[byte % ALPHABET.length]).join('');
  return characters.replace(/(.{4})(?=.)/g, '$1-');
}

/** What the picture holds: a URI of our own, in the characters that make the smallest picture. */
export function enrolmentPayload(code: string): string {
  return SCHEME + code;
}

/** The QR code of a payload as SVG. Its library comes with the first code: ten MiB that few processes ever need. */
export async function enrolmentPicture(payload: string): Promise<string> {
  const { default: picture } = await import('qrcode');
  return picture.toString(payload, { type: 'svg', errorCorrectionLevel: 'M' });
}

/** SHA-256 of a code as it was typed, or of all that a camera read from the picture; null for what can be none. */
export function hashEnrolmentCode(typed: string): Buffer | null {
  const upper = typed.trim().toUpperCase();
  const code = upper.startsWith(SCHEME) ? upper.slice(SCHEME.length) : upper;
  const plain = code.replace(/[\s-]/g, '').replaceAll('O', '0').replace(/[IL]/g, '1');
  if (plain.length !== CHARACTERS || [...plain].some((character) => !ALPHABET.includes(character))) return null;
  return createHash('sha256').update(plain).digest();
}
