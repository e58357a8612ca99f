/**
 * The shortest secret in an address of ours, 32 random bytes, has 43 characters of base64url; an id has 36. A program
 * may write some of them as %XX, and what it left as it is would be enough of the secret to guess the rest.
 */
const SECRET = /(?:[\w-]|%[\dA-F]{2}){43,}/gi;

/** The path of a request as logs may keep it: without the query, and without the secret of an address that is a key. */
export function loggedPath(url: string): string {
  return (url.split('?')[0] ?? '').replace(SECRET, '…');
}
