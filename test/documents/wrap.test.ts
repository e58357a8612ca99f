import fc from 'fast-check';
import { face } from '../../src/platform/documents/fonts.js';
import { STYLES } from '../../src/platform/documents/theme.js';
import { textWidth, wrap } from '../../src/platform/documents/wrap.js';

const style = STYLES.cell;
const words = fc.array(fc.stringMatching(/^[A-Za-zÀ-ž0-9/–-]{1,60}$/u), { minLength: 1, maxLength: 25 });

describe('wrapping', () => {
  it('keeps every line within the width and every character in its order', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 40, max: 400 }), (parts, width) => {
        const text = parts.join(' ');
        const lines = wrap(text, style, width);
        for (const line of lines) expect(textWidth(line, style)).toBeLessThanOrEqual(width);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
      }),
    );
  });

  it('breaks at spaces, not inside words that fit', () => {
    const text = 'Reset the edge stone and fold the liner behind it';
    expect(wrap(text, style, 120).join(' ')).toBe(text);
  });

  it('does not break at an unbreakable space', () => {
    expect(wrap('a tax of 6.25\u00A0%', style, textWidth('a tax of 6.25', style) + 1)).toEqual(['a tax of', '6.25\u00A0%']);
  });

  it('starts a new line at each line feed', () => {
    expect(wrap('one\n\ntwo', style, 100)).toEqual(['one', '', 'two']);
  });

  it('gives all digits one width, also side by side', () => {
    const widths = ['1111.11', '7777.77', '4141.41', '9074.74'].map((text) => textWidth(text, style));
    expect(new Set(widths).size).toBe(1);
  });

  it('sets figures as wide as full shaping would', () => {
    const { font } = face('bold');
    for (const first of '0123456789.,$€£%+-()') {
      for (const second of '0123456789.,$€£%+-()') {
        const shaped = (font.layout(first + second).advanceWidth / font.unitsPerEm) * 1000;
        expect(face('bold').widthOf(first + second, 1000)).toBeCloseTo(shaped, 6);
      }
    }
  });
});
