import type { Role } from './actor.js';
import type { Problem } from '../http/problem.js';
import type { TokenSubject } from './access-tokens.js';

/**
 * Says whether a session still stands, and the role its person has now. The slice that owns sessions provides it:
 * a token alone would let a dismissed person in until it expires.
 */
export abstract class SessionGate {
  /** null when the session has ended. */
  abstract roleOf(subject: TokenSubject): Promise<Role | null>;

  /** What to tell the holder of an ended session. */
  abstract refusal(subject: TokenSubject): Promise<Problem>;
}
