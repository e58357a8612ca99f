import { setTimeout as wait } from 'node:timers/promises';
import { composeQuoteDocument } from '../../src/features/quotes/quote-document.js';
import { renderDocument, REPLACEMENT } from '../../src/platform/documents/index.js';
import { pageText, readPdf } from './read-pdf.js';
import { COMPANY, labor, manyLines, part, quoteInput, sums } from './samples.js';

const model = composeQuoteDocument(quoteInput());

function render(lines: ReturnType<typeof manyLines>) {
  return renderDocument(composeQuoteDocument(quoteInput(sums(lines, '6.25'))));
}

describe('a rendered document', () => {
  it('numbers its pages and repeats the table header on each page that has rows', async () => {
    const { pages } = await readPdf(await render(manyLines(60)));
    expect(pages.length).toBeGreaterThan(2);
    pages.forEach((page, index) => expect(pageText(page)).toContain(`Page ${index + 1} of ${pages.length}`));
    for (const page of pages) {
      const hasRows = page.some((item) => /item \d+$/u.test(item.text));
      expect(page.some((item) => item.text === 'Unit price')).toBe(hasRows);
    }
  });

  it('prints all of 200 lines once and in order', async () => {
    const { text } = await readPdf(await render(manyLines(200)));
    const seen = [...text.matchAll(/item (\d+) /gu)].map((match) => Number(match[1]));
    const expected = Array.from({ length: 200 }, (_, index) => index + 1).filter((each) => (each - 1) % 25 !== 0);
    expect(seen).toEqual(expected);
  });

  it('keeps a 2,000-character description whole over a page break', async () => {
    const words = Array.from({ length: 400 }, (_, index) => `w${1000 + index}`);
    const description = words.join(' ').slice(0, 2_000);
    const lines = [...manyLines(30), labor('Edge', description, '1', '10.00'), part('Edge', 'Last stone', '1', 'each', '5.00', '5.00')];
    const { text, pages } = await readPdf(await render(lines));
    expect(text.match(/w\d{4}/gu)).toEqual(description.match(/w\d{4}/gu));
    expect(pages.filter((page) => /w\d{4}/u.test(pageText(page)))).toHaveLength(2);
  });

  it('breaks a description longer than a page rather than losing its end', async () => {
    const words = Array.from({ length: 2_500 }, (_, index) => `w${10_000 + index}`);
    const { text } = await readPdf(await render([labor('Edge', words.join(' '), '1', '10.00')]));
    expect(text.match(/w\d{5}/gu)).toEqual(words);
  });

  it('keeps the sums together, and with the last two rows, wherever the page ends', async () => {
    for (let count = 14; count <= 30; count += 1) {
      const rows = Array.from({ length: count }, (_, index) => part('Edge', `row ${index + 1}.`, '1', 'each', '1.00', '1.00'));
      const { pages } = await readPdf(await render(rows));
      const [last, ...others] = pages.filter((page) => /Net total|Sales tax/u.test(pageText(page)));
      expect(others).toEqual([]);
      for (const row of [count - 1, count]) expect(pageText(last)).toContain(`row ${row}.`);
      expect(pageText(last)).toMatch(/Edge subtotal .*Net total .*Sales tax .*Total/u);
    }
  });

  it('leaves no section title at the foot of a page', async () => {
    for (let count = 24; count <= 40; count += 2) {
      const { pages } = await readPdf(await render(manyLines(count)));
      const titles = new Set(manyLines(count).map((line) => line.costCode));
      for (const page of pages) {
        const body = page.filter((item) => item.y > 50);
        const lowest = Math.min(...body.map((item) => item.y));
        expect(body.filter((item) => item.y === lowest && titles.has(item.text))).toEqual([]);
      }
    }
  });

  it.each(['letter', 'a4'] as const)('keeps everything within the margins of %s paper', async (paperSize) => {
    const company = { ...COMPANY, paperSize };
    const lines = [...manyLines(40), part('Edge', 'x'.repeat(300), '1234567.5', 'ft2', '99999999.99', '99999999999.99')];
    const { pages } = await readPdf(await renderDocument(composeQuoteDocument(quoteInput({ company, ...sums(lines, '6.25') }))));
    const [width, height] = paperSize === 'letter' ? [612, 792] : [595.28, 841.89];
    for (const item of pages.flat()) {
      expect(item.x).toBeGreaterThanOrEqual(53.9);
      expect(item.x + item.width).toBeLessThanOrEqual(width - 53.9);
      expect(item.y).toBeGreaterThan(24);
      expect(item.y).toBeLessThan(height - 40);
    }
  });

  it('sets the amounts of a column to one right edge', async () => {
    const { pages } = await readPdf(await renderDocument(model));
    const amounts = (pages[0] ?? []).filter((item) => /^[\d,]+\.\d{2}$/u.test(item.text) && item.x > 490);
    expect(amounts.length).toBeGreaterThan(5);
    for (const item of amounts) expect(item.x + item.width).toBeCloseTo(558, 1);
  });

  it('hangs the lines of a step from its number', async () => {
    const paragraphs = ['one '.repeat(60).trim(), 'two'];
    const { pages } = await readPdf(await renderDocument({ ...model, notes: [{ heading: 'Steps', paragraphs, numbered: true }] }));
    const items = pages.flat();
    const xOf = (pattern: RegExp): number[] => items.filter((item) => pattern.test(item.text)).map((item) => Math.round(item.x));
    expect(xOf(/^[12]\. ?$/u)).toEqual([55, 55]);
    expect(new Set(xOf(/^(one|two)\b/u))).toEqual(new Set([69]));
    expect(xOf(/^one\b/u).length).toBeGreaterThan(1);
  });

  it('gives names in Cyrillic, Greek and Vietnamese back as text', async () => {
    const names = ['Иван Щукин', 'Ελένη Ωνάση', 'Nguyễn Thị Ước', 'Łucja Žáková'];
    const { text } = await readPdf(await renderDocument({ ...model, parties: [{ heading: 'To', lines: names }] }));
    for (const name of names) expect(text).toContain(name);
  });

  it('gives a letter back as text when it was first met as a part of an accented one', async () => {
    await renderDocument({ ...model, footer: 'Ӂ' });
    const { text } = await readPdf(await renderDocument({ ...model, footer: 'Жар' }));
    expect(text).toContain('Жар');
  });

  it('prints a visible mark for what the font cannot draw, and no control character', async () => {
    const lines = ['Mia 👩🏽‍🔬 Teich', 'ab\u0000c\u202Edef\u202C', '池'];
    const { text } = await readPdf(await renderDocument({ ...model, parties: [{ heading: 'To', lines }] }));
    expect(text).toContain(`Mia ${REPLACEMENT} Teich`);
    expect(text).toContain(`abcdef ${REPLACEMENT}`);
    expect(text).not.toMatch(/[\p{Cc}\p{Cf}]/u);
  });

  it('embeds every font it uses', async () => {
    const raw = (await renderDocument(model)).toString('latin1');
    const descriptors = raw.match(/\/Type \/FontDescriptor/gu) ?? [];
    expect(descriptors).toHaveLength(2);
    expect(raw.match(/\/FontFile2 \d+ 0 R/gu)).toHaveLength(descriptors.length);
    expect(raw).not.toMatch(/\/Subtype \/Type1|Helvetica/u);
  });

  it('keeps its metadata well-formed when a title has XML in it', async () => {
    const { title, xmp } = await readPdf(await renderDocument({ ...model, title: 'Quote <A&B> "x" \u0007' }));
    expect(title).toBe('Quote A B "x"');
    expect(xmp).toContain('>Quote A B "x"</rdf:li>');
  });

  it('says nothing about the customer in its metadata', async () => {
    const { xmp, title } = await readPdf(await renderDocument(model));
    expect(title).toBe('Quote Q-1042');
    expect(xmp).not.toContain('Brandvold');
  });

  it('is tagged, with its language, one main heading, and a table of rows and cells', async () => {
    const { roles, language } = await readPdf(await renderDocument(model));
    expect(language).toBe('en-US');
    expect(roles.filter((role) => role === 'H1')).toHaveLength(1);
    for (const role of ['H2', 'P', 'Table', 'TR', 'TH', 'TD', 'L', 'LI', 'LBody']) expect(roles).toContain(role);
  });

  it('gives the same bytes for the same model, at another time and after other documents', async () => {
    const first = await renderDocument(model);
    await render(manyLines(30, 7));
    // Past the next full second: the finest time that a PDF writes.
    await wait(1_050);
    expect((await renderDocument(model)).equals(first)).toBe(true);
  });

  it('keeps the price on paper, whatever length the other texts have', async () => {
    const long = 'Everlong '.repeat(300).trim();
    const endless = Array.from({ length: 90 }, (_, index) => `address ${index}`);
    const party = { heading: 'To', lines: [long, ...endless] };
    const lines = [part(`Edge ${'of stone '.repeat(30)}`, 'One', '1', 'each', '1.00', '1.00'), part(`Edge ${'of stone '.repeat(30)}`, 'Two', '1', 'each', '1.00', '1.00')];
    const base = composeQuoteDocument(quoteInput(sums(lines, '6.25')));
    const { pages, text } = await readPdf(await renderDocument({ ...base, parties: [party], subject: long, footer: long }));
    expect(text).toContain('Total $2.13');
    expect(text.match(/of stone/gu)?.length).toBe(60);
    for (const item of pages.flat()) expect(item.y).toBeGreaterThan(24);
  });

  it('finds a page for the last row when the sums below it would fill one', async () => {
    const totals = Array.from({ length: 60 }, (_, index) => ({ label: `Tax ${index}`, value: '$1.00', strong: false }));
    const { text } = await readPdf(await renderDocument({ ...model, totals }));
    expect(text).toContain('Tax 59');
  });

  it('lays out a document without any line', async () => {
    const { text } = await readPdf(await renderDocument({ ...model, table: { ...model.table, sections: [] } }));
    expect(text).toContain('Page 1 of');
  });
});
