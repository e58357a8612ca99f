import { composeQuoteDocument } from '../../src/features/quotes/quote-document.js';
import { renderDocument } from '../../src/platform/documents/index.js';
import { readPdf } from './read-pdf.js';
import { quoteInput, WORKED_LINES } from './samples.js';

describe('a quote on paper', () => {
  it('says what is bought, where, until when, for how much, and what happens next', async () => {
    const { text } = await readPdf(await renderDocument(composeQuoteDocument(quoteInput())));
    for (const words of [
      'Quote',
      'Q-1042, revision 2',
      'Valid until April 12, 2027',
      'Renovation of the lower garden pond',
      'Lower garden (pond)',
      'License WG-20418',
      'Net total $5,613.11',
      'Sales tax 6.25% on 1,822.11 $113.88',
      'Total $5,726.99',
      'What happens next',
      'I accept quote Q-1042, revision 2, for a total of $5,726.99',
      'Signature',
    ]) {
      expect(text).toContain(words);
    }
  });

  it('shows no hours, no hourly rate and no working of a labor line', async () => {
    const { text } = await readPdf(await renderDocument(composeQuoteDocument(quoteInput())));
    for (const secret of ['20.5', '35.25', '68.00', '68']) expect(text).not.toContain(secret);
    expect(text).toContain('640 ft² 1.22 780.80');
  });

  it('groups lines by cost code in the order in which the codes appear, with the sum of each group', () => {
    const { sections } = composeQuoteDocument(quoteInput()).table;
    expect(sections.map(({ title, subtotal }) => [title, subtotal?.value])).toEqual([
      ['Clean-out', undefined],
      ['Edge', undefined],
      ['Filtration', '1,041.31'],
      ['Liner', undefined],
    ]);
  });

  it('refuses a net total that is not the sum of its lines', () => {
    expect(() => composeQuoteDocument(quoteInput({ netTotal: '5613.12' }))).toThrow('net total 5613.12');
  });

  it('refuses a gross total that is not the net total and the taxes', () => {
    expect(() => composeQuoteDocument(quoteInput({ grossTotal: '5727.00' }))).toThrow('gross total 5727.00');
  });

  it('refuses a quote with a line left out', () => {
    expect(() => composeQuoteDocument(quoteInput({ lines: WORKED_LINES.slice(1) }))).toThrow(RangeError);
  });

  it('warns of electricity, open water, excavation and waste water, and defers to local code', () => {
    const [caution] = composeQuoteDocument(quoteInput()).cautions;
    const words = [caution?.lead, ...(caution?.items ?? [])].join(' ');
    for (const topic of ['Electricity near water', 'children', 'Excavation', 'lifting', 'Waste water', 'Permits', 'Local code and licensed practice']) {
      expect(words).toContain(topic);
    }
  });
});
