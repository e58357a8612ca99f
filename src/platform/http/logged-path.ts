/** The shortest secret in an address of ours, 32 random bytes, has 43 characters of base64url; an id has 36. */
const SECRET = /[A-Za-z0-9_-]{43,}/g;

/** The path of a request as logs may keep it: without the query, and without the secret of an address that is a key. */
export function loggedPath(url: string): string {
  return (url.split('?')[0] ?? '').replace(SECRET, '…');
}
