import { Problem } from './problem.js';

/** A part of some bytes; both ends are counted from 0 and belong to it. */
export interface ByteRange {
  readonly first: number;
  readonly last: number;
}

/**
 * The part that the header Range asks for.
 * @param size of the whole, in bytes
 * @returns null where the whole is to be sent: without the header, and for what a server may pass over, such as another
 *   unit, several parts at once, or an end before its beginning
 * @throws Problem 416 for a part that begins beyond the last byte
 * @see RFC 9110, 14.1.2 and 14.2
 */
export function byteRange(header: string | undefined, size: number): ByteRange | null {
  const [, from, to] = /^bytes=(\d*)-(\d*)$/i.exec(header?.trim() ?? '') ?? [];
  if (from === undefined || to === undefined || from + to === '') return null;
  if (from !== '' && to !== '' && Number(from) > Number(to)) return null;
  const first = from === '' ? Math.max(0, size - Number(to)) : Number(from);
  const last = from === '' || to === '' ? size - 1 : Math.min(Number(to), size - 1);
  if (first > last) throw new Problem('range-not-satisfiable', `There are ${size} bytes, counted from 0. Ask for some of them, or leave the header Range out.`, [], { 'content-range': `bytes */${size}` });
  return { first, last };
}
