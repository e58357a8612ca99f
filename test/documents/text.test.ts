import fc from 'fast-check';
import { clean, REPLACEMENT } from '../../src/platform/documents/index.js';

describe('text made fit to print', () => {
  it.each([
    ['a smiling face', '😀'],
    ['a family joined from four', '👨‍👩‍👧‍👦'],
    ['a scientist with a skin tone', '👩🏽‍🔬'],
    ['a flag of two letters', '🇸🇪'],
    ['a flag of tags', '🏴󠁧󠁢󠁳󠁣󠁴󠁿'],
    ['a heart with a variation selector', '❤️'],
    ['a Chinese character', '池'],
    ['a Hebrew letter', 'א'],
    ['half of a surrogate pair', '\uD83D'],
  ])('shows one replacement mark for %s', (_what, text) => {
    expect(clean(`pond ${text} frog`)).toBe(`pond ${REPLACEMENT} frog`);
  });

  it('keeps the digit of a keycap and marks the rest of it', () => {
    expect(clean('1️⃣')).toBe(`1${REPLACEMENT}`);
  });

  it.each(['Łukasz Žižka', 'Иван Щукин', 'Ωνάσης', 'Nguyễn Thị Ước', 'Ærøskøbing', '18–24 in, ½″ × 3 m²', '€ £ ₫ ₴ ₹'])(
    'leaves %s as it is',
    (text) => {
      expect(clean(text)).toBe(text);
    },
  );

  it('writes out signs of the trade that the font lacks', () => {
    expect(clean('⌀ 2 in, ≤ 10 ft deep, ≥ 3 ft wide, ≈ 40 gpm, pump → filter')).toBe('Ø 2 in, <= 10 ft deep, >= 3 ft wide, ~ 40 gpm, pump -> filter');
    expect(clean(clean('⌀\u0301 ≤\u0338'))).toBe(clean('⌀\u0301 ≤\u0338'));
  });

  it('composes letters typed with separate accents', () => {
    expect(clean('Nguye\u0302\u0303n')).toBe('Nguyễn');
  });

  it('takes out controls, bidirectional overrides and zero-width characters', () => {
    expect(clean('to\u0000tal\u202E 00.1\u202C\u200B\u00AD\uFEFF\u2066\u0085!')).toBe('total 00.1\n!');
  });

  it('keeps line feeds, whatever the system calls them, and turns tabs into spaces', () => {
    expect(clean('a\r\nb\rc\u2028d\te')).toBe('a\nb\nc\nd e');
  });

  it('limits accents stacked over one letter, so that they cannot climb over the line above', () => {
    expect(clean(`x${'\u0353'.repeat(60)}y`)).toBe(`x\u0353\u0353\u0353${REPLACEMENT}y`);
  });

  it('gives text that is already clean back unchanged, for any input', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (text) => {
        const once = clean(text);
        expect(clean(once)).toBe(once);
        expect(once).not.toMatch(/(?!\n)[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}]/u);
      }),
      { numRuns: 2_000 },
    );
  });
});
