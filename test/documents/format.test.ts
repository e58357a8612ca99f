import { documentFormat } from '../../src/platform/documents/index.js';

describe('numbers and dates in the company\'s own form', () => {
  it('writes US money and dates', () => {
    const format = documentFormat('en-US', 'USD');
    expect(format.money('5726.99')).toBe('$5,726.99');
    expect(format.amount('1394.00')).toBe('1,394.00');
    expect(format.date('2027-04-12')).toBe('April 12, 2027');
  });

  it('writes German ones', () => {
    const format = documentFormat('de-DE', 'EUR');
    expect(format.amount('1394.00')).toBe('1.394,00');
    expect(format.date('2027-04-12')).toBe('12. April 2027');
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
