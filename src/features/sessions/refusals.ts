import { Problem } from '../../platform/http/problem.js';

const CHALLENGE = { 'www-authenticate': 'Bearer realm="rillbook"' };

export function sessionEnded(): Problem {
  return new Problem('session-ended', 'The session was ended, or the person may no longer sign in. Sign in again.', [], CHALLENGE);
}

/** Says what becomes of work that is still on the phone: it must not seem that trying again would help. */
export function deviceRevoked(): Problem {
  return new Problem(
    'device-revoked',
    'This device was shut out, or its person no longer works for the company. Nothing is taken from it any more: what it has not sent must be handed in by another way, such as by telling the crew lead or the office.',
    [],
    CHALLENGE,
  );
}
