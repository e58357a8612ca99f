import { ApiSchema } from '@nestjs/swagger';
import { Field, isCleanText, TextField } from '../../platform/http/fields/index.js';

/** A character of a password may be typed as a letter and up to three marks; the length of a new one is counted after they are joined. */
export const LONGEST_TYPED = 4 * 128;

/** Passwords so common that length does not help; compared without case, spaces and repeated endings. */
const COMMON = ['passwordpassword', 'password12345678', '1234567890123456', '123456789012345', 'qwertyuiopasdfgh', 'aaaaaaaaaaaaaaa', 'letmeinletmeinletmein'];

function check(value: unknown): string | null {
  if (typeof value !== 'string') return 'must be text';
  const normal = value.normalize('NFKC');
  const length = [...normal].length;
  if (length < 15) return `must have at least 15 characters; it has ${length}. A sentence of your own is easy to remember`;
  if (length > 128) return `must have at most 128 characters; it has ${length}`;
  // Signing in takes one line of text: what could be set but not sent again would lock the person out.
  if (!isCleanText(value) || /[\t\n\r]/.test(value)) return 'must not hold tabs, line breaks and other control characters; remove them';
  const plain = normal.toLowerCase().replace(/\s/g, '');
  if (COMMON.includes(plain) || new Set(plain).size < 4) return 'is among the first that anyone would try; take another';
  return null;
}

@ApiSchema({ name: 'NewPassword' })
export class PasswordBody {
  /** NIST SP 800-63B-4: at least 15 characters where the password is the only factor, and no rules of composition. */
  @Field({ description: 'The new password: 15 to 128 characters of any script in one line; there are no other rules.', example: 'seven herons on a mossy ledge' }, { type: 'string', minLength: 15, maxLength: 128 }, check)
  password: string;

  @TextField({ description: 'The present password; needed to change one\'s own.', max: LONGEST_TYPED, optional: true })
  currentPassword?: string | null;
}
