import { face } from './fonts.js';
import type { TextStyle } from './theme.js';

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

export function textWidth(text: string, style: TextStyle): number {
  return face(style.weight).widthOf(text, style.size);
}

/**
 * Clean text as lines no wider than `width` points. Breaks at spaces and after hyphens and slashes; a single word
 * wider than the line is cut between characters, because overprinting the next column would hide a price.
 */
export function wrap(text: string, style: TextStyle, width: number): string[] {
  return text.split('\n').flatMap((paragraph) => wrapParagraph(paragraph, style, width));
}

function wrapParagraph(paragraph: string, style: TextStyle, width: number): string[] {
  const whole = paragraph.trim();
  if (textWidth(whole, style) <= width) return [whole];
  const lines: string[] = [];
  let line = '';
  for (const piece of pieces(whole)) {
    if (textWidth((line + piece).trimEnd(), style) <= width) {
      line += piece;
      continue;
    }
    if (line !== '') lines.push(line.trimEnd());
    const cut = cutToFit(piece, style, width);
    lines.push(...cut.slice(0, -1));
    line = cut.at(-1) ?? '';
  }
  return line === '' ? lines : [...lines, line.trimEnd()];
}

/** What may stand at the start of a line: words with the spaces after them, and parts after a hyphen or slash. */
function pieces(text: string): string[] {
  return text.split(/(?<= )(?! )|(?<=\p{L}[-–/])(?=\p{L})/u);
}

function cutToFit(piece: string, style: TextStyle, width: number): string[] {
  if (textWidth(piece.trimEnd(), style) <= width) return [piece];
  const parts: string[] = [];
  let part = '';
  for (const { segment } of graphemes.segment(piece)) {
    if (part !== '' && textWidth((part + segment).trimEnd(), style) > width) {
      parts.push(part);
      part = '';
    }
    part += segment;
  }
  return [...parts, part];
}
