import { composeInvoiceDocument } from '../../src/features/invoices/invoice-document.js';
import { renderDocument } from '../../src/platform/documents/index.js';
import { readPdf } from './read-pdf.js';
import { invoiceInput } from './samples.js';

describe('an invoice on paper', () => {
  it('says what is owed, by when, for which job and how to pay, on one page for a short one', async () => {
    const { text, pages } = await readPdf(await renderDocument(composeInvoiceDocument(invoiceInput())));
    expect(pages).toHaveLength(1);
    for (const words of [
      '$4,726.99 due by June 19, 2027',
      'Job J-77',
      'Quote Q-1042',
      'Total $5,726.99',
      'Paid so far -$1,000.00',
      'Balance due $4,726.99',
      'How to pay',
      'give invoice number INV-311',
      'routing 021000021',
      'Safety around the water',
    ]) {
      expect(text).toContain(words);
    }
  });

  it('says that it is paid, and asks for nothing, when nothing is owed', () => {
    const paid = composeInvoiceDocument(invoiceInput({ paidTotal: '5726.99', balanceDue: '0.00' }));
    expect(paid.status).toBe('Paid in full');
    expect(paid.notes).toEqual([{ heading: 'How to pay', paragraphs: ['Nothing is owed on this invoice. Thank you.'] }]);
  });

  it('prints no negative zero before the first payment', () => {
    const fresh = composeInvoiceDocument(invoiceInput({ paidTotal: '0.00', balanceDue: '5726.99' }));
    expect(fresh.totals.find(({ label }) => label === 'Paid so far')?.value).toBe('$0.00');
  });

  it('refuses a balance that is not the total less the payments', () => {
    expect(() => composeInvoiceDocument(invoiceInput({ balanceDue: '4727.00' }))).toThrow('balance due 4727.00');
  });

  it('shows no hours of a labor line', async () => {
    const { text } = await readPdf(await renderDocument(composeInvoiceDocument(invoiceInput())));
    for (const secret of ['20.5', '35.25', '68.00']) expect(text).not.toContain(secret);
  });
});
