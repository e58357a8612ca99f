const plainWords: Readonly<Record<string, string>> = {
  EACCES: 'permission is denied',
  EPERM: 'the operation is not permitted',
  EROFS: 'the file system is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  ENOTDIR: 'a part of the path is a file, not a folder',
  EEXIST: 'a file of that name is in its place',
  ENOENT: 'it does not exist',
  ENAMETOOLONG: 'the path is too long',
};

// Told by their shape, not by `instanceof`: a test runner gives each file an `Error` of its own.
function textOf(error: unknown, field: 'code' | 'message'): string | undefined {
  if (typeof error !== 'object' || error === null || !(field in error)) return undefined;
  const value: unknown = (error as Record<string, unknown>)[field];
  return typeof value === 'string' ? value : undefined;
}

/** The code of a failed call (`EACCES`, …) or statement (SQLSTATE), or `undefined`. */
export function failureCode(error: unknown): string | undefined {
  return textOf(error, 'code');
}

/** What went wrong in plain words, fit to stand after a colon. */
export function failureReason(error: unknown): string {
  return plainWords[failureCode(error) ?? ''] ?? textOf(error, 'message') ?? String(error);
}
