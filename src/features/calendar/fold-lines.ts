/** Without the line break; a continued line begins with a space, which counts. */
const MOST_OCTETS = 74;
const OF_CHARACTER = 0b1100_0000;
const NOT_ITS_FIRST = 0b1000_0000;

/**
 * Text whose lines end with CRLF, folded between characters. The library that writes the events has a fold of its own,
 * which encodes each character by itself: that was most of the time of a long calendar.
 * @see RFC 5545, 3.1
 */
export function foldLines(text: string): string {
  return text.split('\r\n').map(foldLine).join('\r\n');
}

function foldLine(line: string): string {
  const octets = Buffer.from(line);
  if (octets.length <= MOST_OCTETS) return line;
  const parts: string[] = [];
  let start = 0;
  while (start < octets.length) {
    let end = Math.min(start + MOST_OCTETS, octets.length);
    while (((octets[end] ?? 0) & OF_CHARACTER) === NOT_ITS_FIRST) end -= 1;
    parts.push(octets.toString('utf8', start, end));
    start = end;
  }
  return parts.join('\r\n ');
}
