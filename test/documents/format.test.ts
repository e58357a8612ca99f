import { clean, documentFormat, REPLACEMENT } from '../../src/platform/documents/index.js';

describe('numbers and dates in the company\'s own form', () => {
  it('writes US money and dates', () => {
    const format = documentFormat('en-US', 'USD');
    expect(format.money('5726.99')).toBe('$5,726.99');
    expect(format.amount('1394.00')).toBe('1,394.00');
    expect(format.date('2027-04-12')).toBe('April 12, 2027');
    expect(format.percent('6.250')).toBe('6.25%');
  });

  it('writes German ones', () => {
    const format = documentFormat('de-DE', 'EUR');
    expect(format.amount('1394.00')).toBe('1.394,00');
    expect(format.percent('6.25')).toBe('6,25\u00A0%');
  });

  it('names the month in English, as all the words around it are', () => {
    const dates = ['en-US', 'en-GB', 'de-DE', 'fr-CA', 'th-TH', 'fa-IR'].map((locale) => documentFormat(locale, 'USD').date('2027-05-12'));
    expect(dates).toEqual(['May 12, 2027', ...Array<string>(5).fill('12 May 2027')]);
  });

  it.each(['ar-EG', 'fa-IR', 'hi-IN-u-nu-deva', 'ja-JP', 'th-TH'])('writes %s in figures and signs that the font can draw', (locale) => {
    for (const currency of ['EGP', 'JPY', 'INR', 'USD']) {
      const format = documentFormat(locale, currency);
      const printed = [format.money('-1394'), format.amount('1394'), format.quantity('12.5'), format.percent('6.25'), format.date('2027-04-12')].map(clean);
      expect(printed.join(' ')).toMatch(/1,394.* 12\.5 /);
      expect(printed.join(' ')).not.toContain(REPLACEMENT);
    }
  });

  // ISO 4217: yen 0, Kuwaiti dinar 3, Iraqi dinar 3 (which the runtime's own display data prints with none).
  it.each([
    ['JPY', '1394', '1,394'],
    ['KWD', '1394.500', '1,394.500'],
    ['IQD', '1394.125', '1,394.125'],
  ])('prints every minor unit of %s', (currency, amount, printed) => {
    expect(documentFormat('en-US', currency).amount(amount)).toBe(printed);
  });

  it('loses no cent of an amount that a binary number cannot hold', () => {
    expect(documentFormat('en-US', 'USD').amount('90071992547409931.07')).toBe('90,071,992,547,409,931.07');
  });

  it('drops the zeros that a database adds to a quantity', () => {
    const format = documentFormat('en-US', 'USD');
    expect([format.quantity('640.0000'), format.quantity('12.50')]).toEqual(['640', '12.5']);
  });

  it('refuses what is no plain decimal number', () => {
    const format = documentFormat('en-US', 'USD');
    for (const text of ['1e3', '', 'Infinity', '0x10']) expect(() => format.money(text)).toThrow(RangeError);
  });
});
