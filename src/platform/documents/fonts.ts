import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import * as fontkit from 'fontkit';
import { Face } from './face.js';

export type Weight = 'regular' | 'bold';

/**
 * Noto Sans (SIL Open Font License): Latin, Cyrillic, Greek and Vietnamese, figures of one width, and a visible
 * replacement character. The fonts built into PDF turn every letter outside Latin-1 into garbage.
 */
const FILES: Record<Weight, string> = {
  regular: '@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf',
  bold: '@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf',
};

const faces = new Map<Weight, Face>();
let drawable: ReadonlySet<number> | undefined;

/** Parsed once per process: parsing a font anew for every document took most of the time of rendering it. */
export function face(weight: Weight): Face {
  const known = faces.get(weight);
  if (known) return known;
  const path = createRequire(import.meta.url).resolve(FILES[weight]);
  const font = fontkit.create(readFileSync(path));
  if (!('layout' in font)) throw new Error(`The document font ${FILES[weight]} is a collection, not a single font.`);
  const made = new Face(font);
  faces.set(weight, made);
  return made;
}

/** Whether both weights can draw a code point. pdfkit drops what a font cannot draw without a word. */
export function canDraw(codePoint: number): boolean {
  if (!drawable) {
    const bold = new Set(face('bold').font.characterSet);
    drawable = new Set(face('regular').font.characterSet.filter((each) => bold.has(each)));
  }
  return drawable.has(codePoint);
}
