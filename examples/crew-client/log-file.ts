import { closeSync, existsSync, fdatasyncSync, fsyncSync, ftruncateSync, openSync, readFileSync, renameSync, writeSync } from 'node:fs';
import path from 'node:path';

/** @returns how many bytes it took */
export type Write = (descriptor: number, bytes: Buffer, from: number) => number;

/**
 * A file of records, one JSON line each, that only grows, until it is written anew. A record counts when its line is
 * whole: what a dying phone left of the last one is cut away at the next start. Every write is on the disk when the
 * call returns, since the crew is told "saved" on the strength of it.
 */
export class LogFile<R extends object> {
  private constructor(
    private readonly name: string,
    private descriptor: number,
    private length: number,
    private readonly write: Write,
  ) {}

  /** Opens or makes it. @param write puts bytes into a file @returns the file and all whole records in it */
  static open<R extends object>(name: string, write: Write = writeSync): { file: LogFile<R>; records: R[] } {
    const isNew = !existsSync(name);
    const descriptor = openSync(name, 'a', 0o600);
    if (isNew) syncFolderOf(name);
    const bytes = readFileSync(name);
    const whole = bytes.lastIndexOf('\n') + 1;
    // Else the next record would be glued to half a line, and both would be lost.
    if (whole < bytes.length) ftruncateSync(descriptor, whole);
    const records = bytes.subarray(0, whole).toString('utf8').split('\n').slice(0, -1).map((line) => JSON.parse(line) as R);
    return { file: new LogFile<R>(name, descriptor, whole, write), records };
  }

  /** Bytes. */
  get size(): number {
    return this.length;
  }

  append(record: R): void {
    const line = Buffer.from(`${JSON.stringify(record)}\n`);
    try {
      this.writeAll(this.descriptor, line);
      fdatasyncSync(this.descriptor);
    } catch (error) {
      // A full disk takes half a line. The crew is told that this was not saved, but what is saved next must not be
      // glued to it: that line would be none, and the file could not be read any more.
      ftruncateSync(this.descriptor, this.length);
      throw error;
    }
    this.length += line.length;
  }

  /** Puts these records in the place of all, at once: a phone that dies over it has the old ones or the new ones. */
  replace(records: readonly R[]): void {
    const fresh = `${this.name}.new`;
    const bytes = Buffer.from(records.map((record) => `${JSON.stringify(record)}\n`).join(''));
    const descriptor = openSync(fresh, 'w', 0o600);
    this.writeAll(descriptor, bytes);
    fsyncSync(descriptor);
    closeSync(descriptor);
    renameSync(fresh, this.name);
    syncFolderOf(this.name);
    closeSync(this.descriptor);
    this.descriptor = openSync(this.name, 'a', 0o600);
    this.length = bytes.length;
  }

  close(): void {
    closeSync(this.descriptor);
  }

  private writeAll(descriptor: number, bytes: Buffer): void {
    for (let done = 0; done < bytes.length; ) done += this.write(descriptor, bytes, done);
  }
}

/** A new name is on the disk only when its folder is. */
export function syncFolderOf(name: string): void {
  const folder = openSync(path.dirname(name), 'r');
  fsyncSync(folder);
  closeSync(folder);
}
