import { createHash } from 'node:crypto';
import { closeSync, fsyncSync, mkdirSync, openSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { syncFolderOf } from './log-file.js';

/** The bytes of photos, each in a file that is called by its SHA-256, so that the same picture is kept once. */
export class PhotoFiles {
  constructor(private readonly folder: string) {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
  }

  /** On the disk when it returns. @returns the SHA-256 in hexadecimal digits */
  keep(bytes: Uint8Array): string {
    const sha256 = sha256Of(bytes);
    const fresh = this.nameOf(`${sha256}.new`);
    const descriptor = openSync(fresh, 'w', 0o600);
    try {
      writeFileSync(descriptor, bytes);
      fsyncSync(descriptor);
    } finally {
      closeSync(descriptor);
    }
    // Under its name only when it is whole: a phone that dies over it leaves nothing that looks like the photo.
    renameSync(fresh, this.nameOf(sha256));
    syncFolderOf(this.nameOf(sha256));
    return sha256;
  }

  /** null when the file is gone, or is not what was written: flash wears out. */
  read(sha256: string): Uint8Array<ArrayBuffer> | null {
    try {
      const bytes = new Uint8Array(readFileSync(this.nameOf(sha256)));
      return sha256Of(bytes) === sha256 ? bytes : null;
    } catch {
      return null;
    }
  }

  /** Takes away what no photo needs any more. */
  keepOnly(needed: ReadonlySet<string>): void {
    for (const name of readdirSync(this.folder)) if (!needed.has(name)) rmSync(this.nameOf(name), { force: true });
  }

  private nameOf(sha256: string): string {
    return path.join(this.folder, sha256);
  }
}

function sha256Of(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
