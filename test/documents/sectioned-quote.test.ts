import { decimal, sumDecimals } from '../../src/domain/decimal.js';
import { composeQuoteDocument } from '../../src/features/quotes/quote-document.js';
import { renderDocument } from '../../src/platform/documents/index.js';
import { readPdf } from './read-pdf.js';
import { quoteInput } from './samples.js';
import { section, sectionedInput } from './scope-samples.js';

const figure = (text: string) => decimal(text.replaceAll(/[$,]/g, ''));

describe('a quote in sections on paper', () => {
  it('stands phase by phase, options last and marked, each with its sum', () => {
    const { sections } = composeQuoteDocument(sectionedInput()).table;
    expect(sections.map(({ title, subtotal }) => [title, subtotal?.label, subtotal?.value])).toEqual([
      ['Included in any case', 'Included in any case, subtotal', '1,394.00'],
      ['Phase 1: Skimmer and circulation', 'Skimmer and circulation subtotal', '1,626.67'],
      ['Phase 1: Lights (optional)', 'Lights, optional, not in the totals below', '353.60'],
      ['Phase 2: Liner', 'Liner subtotal', '780.80'],
      ['Phase 2: Waterfall and stream (optional)', 'Waterfall and stream, optional, not in the totals below', '1,572.64'],
      ['Phase 2: Water lilies (optional)', 'Water lilies, optional, not in the totals below', '204.00'],
    ]);
  });

  it('puts labor beside the parts of its cost code', () => {
    const [, circulation] = composeQuoteDocument(sectionedInput()).table.sections;
    expect(circulation?.rows.map((row) => row['description'])).toEqual(['Set the skimmer and plumb the loop', 'Skimmer with basket and brush filter', 'Trench and lay the return pipe', 'Flexible pipe, 2 in']);
  });

  it('adds up: lines to sections, sections to phases, phases to the net total; options stand after the total', () => {
    const { table, totals } = composeQuoteDocument(sectionedInput());
    expect(totals.map(({ label, value }) => [label, value])).toEqual([
      ['Included in any case', '$1,394.00'],
      ['Phase 1', '$1,626.67'],
      ['Phase 2', '$780.80'],
      ['Net total', '$3,801.47'],
      ['Sales tax 6.25% on 1,523.47', '$95.22'],
      ['Total', '$3,896.69'],
      ['Option Lights: 353.60 and tax 22.10', '$375.70'],
      ['Option Waterfall and stream: 1,572.64 and tax 30.29', '$1,602.93'],
      ['Option Water lilies', '$204.00'],
    ]);
    const printed = table.sections.filter(({ title }) => !title?.endsWith('(optional)')).flatMap(({ rows }) => rows.map((row) => figure(row['amount'] ?? '')));
    expect(sumDecimals(printed).toFixed(2)).toBe('3801.47');
  });

  it('names no phase where there is only one, and offers no choice where there is none', () => {
    const { table, totals, notes, signature } = composeQuoteDocument(sectionedInput(({ sections }) => ({ sections: sections.filter(({ optional }) => !optional).map((each) => ({ ...each, phase: 1 })) })));
    expect(table.sections.map(({ title }) => title)).toEqual(['Included in any case', 'Skimmer and circulation', 'Liner']);
    expect(totals.map(({ label }) => label)).toEqual(['Net total', 'Sales tax 6.25% on 1,523.47', 'Total']);
    expect([notes.map(({ heading }) => heading), signature?.above]).toEqual([['What happens next'], undefined]);
  });

  it('says what can be chosen, and leaves a line to write it on above the signature', async () => {
    const { text } = await readPdf(await renderDocument(composeQuoteDocument(sectionedInput())));
    for (const words of ['What you can choose', 'marked optional', 'left for later', 'with the changes that I name on the first line', 'Options to add, and phases to leave for later', 'Name in print']) expect(text).toContain(words);
    expect(text.indexOf('Options to add')).toBeLessThan(text.indexOf('Name in print'));
  });

  it('prints fifty options, whatever the page', async () => {
    const many = sectionedInput(({ sections }) => ({ sections: [...sections.filter(({ optional }) => !optional), ...Array.from({ length: 50 }, (_, index) => section(`Choice ${index}`, 3, true, sections[0]?.lines ?? []))] }));
    const { text } = await readPdf(await renderDocument(composeQuoteDocument(many)));
    for (let index = 0; index < 50; index += 1) expect(text).toContain(`Option Choice ${index}: 1,572.64 and tax 30.29 $1,602.93`);
    expect(text).toContain('Name in print');
  });

  it('says nothing of phases where only options can be chosen, and nothing of options where only phases can', () => {
    const chosen = (keep: (each: { optional: boolean; phase: number }) => boolean) => {
      const input = sectionedInput();
      const sections = (input.scope?.sections ?? []).filter((each) => !each.optional || keep(each)).map((each) => (keep(each) ? each : { ...each, phase: 1 }));
      return composeQuoteDocument({ ...input, scope: { always: input.scope?.always ?? [], sections } }).notes[0]?.paragraphs ?? [];
    };
    expect(chosen(({ optional }) => optional).join(' ')).not.toContain('left for later');
    expect(chosen(({ optional }) => !optional).join(' ')).not.toContain('optional');
  });

  it('refuses a section whose total is not that of its lines, and an option whose gross is not net and tax', () => {
    const spoiled = (change: object) => () => composeQuoteDocument(sectionedInput(({ sections }) => ({ sections: sections.map((each) => (each.title === 'Lights' ? { ...each, ...change } : each)) })));
    expect(spoiled({ netTotal: '353.61', grossTotal: '375.71' })).toThrow('total of Lights 353.61');
    expect(spoiled({ grossTotal: '375.71' })).toThrow('total of Lights 375.71');
  });

  it('refuses a net total that counts an option, or leaves a base section out', () => {
    const added = sectionedInput(({ sections }) => ({ sections: [...sections, section('More', 1, false, sections[0]?.lines ?? [])] }));
    expect(() => composeQuoteDocument(added)).toThrow('net total');
    expect(() => composeQuoteDocument(quoteInput({ scope: { always: [], sections: [] } }))).toThrow('net total');
  });
});
