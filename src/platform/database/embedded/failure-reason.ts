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

/** The system's code of a failed call (`EACCES`, …), or `undefined`. */
export function failureCode(error: unknown): string | undefined {
  if (!(error instanceof Error) || !('code' in error)) return undefined;
  return typeof error.code === 'string' ? error.code : undefined;
}

/** What went wrong in plain words, fit to stand after a colon or "because". */
export function failureReason(error: unknown): string {
  const code = failureCode(error);
  const words = code === undefined ? undefined : plainWords[code];
  if (words !== undefined) return words;
  return error instanceof Error ? error.message : String(error);
}
