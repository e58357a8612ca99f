import type { Font } from 'fontkit';

interface ShapedGlyph {
  readonly id: number;
  readonly advanceWidth: number;
  readonly codePoints: readonly number[];
}

interface Position {
  xAdvance: number;
  yAdvance: number;
  xOffset: number;
  yOffset: number;
}

interface Word {
  readonly glyphs: readonly ShapedGlyph[];
  readonly positions: readonly Position[];
  /** Thousandths of the type size. */
  readonly width: number;
}

// Substitutions are off, so that each glyph stands for exactly one character: a ligature copies out of a PDF badly.
const FEATURES = { ccmp: false, locl: false, rlig: false, liga: false, clig: false, calt: false, rclt: false };
/** The font has no kerning among these, and every amount is a new word: shaping them was a quarter of all the time. */
const FIGURES = /^[\d.,$€£%+\-() ]+$/u;
const CACHE_LIMIT = 5_000;
const LONGEST_CACHED = 40;

/**
 * One font for the whole process, with the shape of each word remembered: shaping is nine tenths of the cost of a
 * line, and documents repeat their words.
 */
export class Face {
  private readonly words = new Map<string, Word>();
  /** What pdfkit is given as the font: the parsed font with this cache in front of its `layout`. */
  readonly source: Font;

  constructor(readonly font: Font) {
    this.source = Object.create(font, { layout: { value: (text: string) => this.layout(text) } }) as Font;
  }

  /** Points, as pdfkit will draw it: shaped word by word, each with the space that follows it. */
  widthOf(text: string, size: number): number {
    let width = 0;
    for (const word of text.match(/[^ ]* |[^ ]+$/gu) ?? []) width += this.shape(word).width;
    return (width * size) / 1000;
  }

  /** pdfkit scales the positions it is handed in place, so each call gets its own. */
  private layout(text: string) {
    const word = this.shape(text);
    return { glyphs: word.glyphs, positions: word.positions.map((each) => ({ ...each })), advanceWidth: word.width };
  }

  private shape(text: string): Word {
    const known = this.words.get(text);
    if (known) return known;
    const word = this.shapeAnew(text);
    // Bounded by starting over: a service runs for months, and every amount printed is a word of its own.
    if (this.words.size >= CACHE_LIMIT) this.words.clear();
    if (text.length <= LONGEST_CACHED) this.words.set(text, word);
    return word;
  }

  private shapeAnew(text: string): Word {
    const codePoints = Array.from(text, (each) => each.codePointAt(0) ?? 0);
    if (FIGURES.test(text)) return this.setFigures(codePoints);
    const run = this.font.layout(text, FEATURES);
    const oneToOne = run.glyphs.length === codePoints.length;
    // The code points come from the text at hand: the font remembers those of a glyph's first use in the process, and
    // none for a letter first met as a part of an accented one. That letter would copy out of a later file as nothing.
    const glyphs = run.glyphs.map(({ id, advanceWidth, codePoints: remembered }, index) => ({
      id,
      advanceWidth,
      codePoints: oneToOne ? [codePoints[index] ?? 0] : remembered,
    }));
    return this.word(glyphs, run.positions);
  }

  private setFigures(codePoints: readonly number[]): Word {
    const glyphs = codePoints.map((codePoint) => {
      const { id, advanceWidth } = this.font.glyphForCodePoint(codePoint);
      return { id, advanceWidth, codePoints: [codePoint] };
    });
    return this.word(glyphs, glyphs.map(({ advanceWidth }) => ({ xAdvance: advanceWidth, yAdvance: 0, xOffset: 0, yOffset: 0 })));
  }

  private word(glyphs: readonly ShapedGlyph[], from: readonly Position[]): Word {
    const positions = from.map(({ xAdvance, yAdvance, xOffset, yOffset }) => ({ xAdvance, yAdvance, xOffset, yOffset }));
    const advance = positions.reduce((sum, each) => sum + each.xAdvance, 0);
    return { glyphs, positions, width: (advance * 1000) / this.font.unitsPerEm };
  }
}
