/**
 * RFC 9110, HTTP Semantics, 14.1.2 "Byte Ranges": its examples for a representation of 10,000 bytes, and what it says of
 * the others in words.
 */
import { byteRange } from '../../src/platform/http/byte-range.js';
import { Problem } from '../../src/platform/http/problem.js';

const SIZE = 10_000;

describe('RFC 9110, 14.1.2', () => {
  it.each([
    ['the first 500 bytes', 'bytes=0-499', 0, 499],
    ['the second 500 bytes', 'bytes=500-999', 500, 999],
    ['the final 500 bytes', 'bytes=-500', 9500, 9999],
    ['the final 500 bytes, by their beginning', 'bytes=9500-', 9500, 9999],
    ['the first byte only', 'bytes=0-0', 0, 0],
    ['the last byte only', 'bytes=-1', 9999, 9999],
    ['all of it, for a suffix longer than it is', 'bytes=-20000', 0, 9999],
    ['up to the end, for a last position beyond it', 'bytes=9000-20000', 9000, 9999],
    ['the unit whatever its case', 'Bytes=0-499', 0, 499],
  ])('gives %s', (_, header, first, last) => {
    expect(byteRange(header, SIZE)).toEqual({ first, last });
  });

  it.each([['bytes=10000-'], ['bytes=-0'], [`bytes=${'9'.repeat(400)}-`]])('can not satisfy %s', (header) => {
    const asked = (): unknown => byteRange(header, SIZE);
    expect(asked).toThrow(Problem);
    expect(asked).toThrow(expect.objectContaining({ code: 'range-not-satisfiable', headers: { 'content-range': 'bytes */10000' } }));
  });

  it.each([[undefined], [''], ['bytes=-'], ['bytes=500-499'], ['bytes=a-b'], ['bytes=0x0-5'], ['lines=1-2'], ['bytes=0-0,-1'], ['bytes 0-1']])('lets a server pass over %s', (header) => {
    expect(byteRange(header, SIZE)).toBeNull();
  });
});
