import { canDraw } from './fonts.js';

/** Drawn for what the font cannot draw: something visibly missing is asked about, a silent gap is not. */
export const REPLACEMENT = '\uFFFD';

/** Signs of the trade that the font lacks, as they are written where there is no such key. */
const WRITTEN: Readonly<Record<string, string>> = { '≤': '<=', '≥': '>=', '≈': '~', '→': '->', '←': '<-', '⌀': 'Ø', '∅': 'Ø' };
const WRITTEN_SIGNS = new RegExp(`[${Object.keys(WRITTEN).join('')}]`, 'gu');

const LINE_ENDS = /\r\n|[\r\v\f\u0085\u2028\u2029]/gu;
// C0 and C1 controls, and the format characters: bidirectional overrides that could make an amount read backwards,
// zero-width characters, soft hyphens, byte order marks, tags. Line feeds stay.
const INVISIBLE = /(?!\n)[\p{Cc}\p{Cf}\p{Variation_Selector}]/gu;
const SUSPECT = /(?!\n)[\p{Cc}\p{Cf}\p{Cs}\p{Variation_Selector}]|\p{Mn}{4}/u;
const MOST_MARKS = 3;
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * Text of any origin made fit to print: NFC, no control or bidirectional character, spaces of one kind, signs such as
 * ≤ written out, and one visible mark for each thing a reader would see as one character and the font cannot draw.
 * Line feeds stay.
 */
export function clean(text: string): string {
  const tidy = text
    .replace(WRITTEN_SIGNS, (sign) => WRITTEN[sign] ?? sign)
    .normalize('NFC')
    .replace(LINE_ENDS, '\n')
    .replace(/[\u2007\u202F]/gu, '\u00A0')
    .replace(/(?!\u00A0)[\t\p{Zs}]/gu, ' ');
  if (!SUSPECT.test(tidy) && allDrawable(tidy)) return tidy;
  return Array.from(graphemes.segment(tidy), ({ segment }) => cleanGrapheme(segment)).join('');
}

/** Every text of a plain data value cleaned, so that no field of a document can be forgotten. */
export function cleanAll<T>(value: T): T {
  if (typeof value === 'string') return clean(value) as T;
  if (Array.isArray(value)) return value.map((each: unknown) => cleanAll(each)) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, cleanAll<unknown>(each)])) as T;
}

function allDrawable(text: string): boolean {
  for (const each of text) if (each !== '\n' && !canDraw(each.codePointAt(0) ?? 0)) return false;
  return true;
}

function cleanGrapheme(grapheme: string): string {
  const characters = Array.from(grapheme.replace(INVISIBLE, ''));
  const [first] = characters;
  if (first === undefined || first === '\n') return first ?? '';
  // An emoji of several parts (joined persons, flags, skin tones) begins with one and is one mark.
  if (!allDrawable(first)) return REPLACEMENT;
  const rest = characters.slice(1);
  // Stacked accents without end would climb over the lines above, prices among them.
  const kept = rest.filter((each) => allDrawable(each)).slice(0, MOST_MARKS);
  return first + kept.join('') + (kept.length < rest.length ? REPLACEMENT : '');
}
