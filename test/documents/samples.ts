import { decimal, sumDecimals } from '../../src/domain/decimal.js';
import type { DocumentLine } from '../../src/features/customer-documents/index.js';
import type { InvoiceDocumentInput } from '../../src/features/invoices/invoice-document.js';
import type { QuoteDocumentInput } from '../../src/features/quotes/quote-document.js';

export const COMPANY = {
  name: 'Marlow & Finch Water Gardens',
  addressLines: ['2207 Quarry Bend Road', 'Larkmere, MI 49000'],
  phone: '+1 555 0142',
  email: 'office@marlowfinch.example',
  licenceNumber: 'WG-20418',
  locale: 'en-US',
  paperSize: 'letter',
} as const;

const CUSTOMER = {
  name: 'Ottoline Brandvold',
  addressLines: ['18 Heron Lane', 'Larkmere, MI 49001'],
  email: 'ottoline@brandvold.example',
  phone: '+1 555 0177',
};

const SITE = { addressLines: ['18 Heron Lane', 'Larkmere, MI 49001'], featureName: 'Lower garden', featureKind: 'pond' };

/** The worked example of the price rules: 5,613.11 net, 113.88 tax on 1,822.11. */
export const WORKED_LINES: readonly DocumentLine[] = [
  labor('Clean-out', 'Drain, move fish and frogs, take out sediment, rinse down', '20.50', '1394.00'),
  labor('Edge', 'Reset the edge stone and fold the liner behind it', '35.25', '2397.00'),
  part('Filtration', 'Skimmer with basket and brush filter', '1', 'each', '556.67', '556.67'),
  part('Liner', 'Underlayment, non-woven, 8 oz', '640', 'ft2', '1.22', '780.80'),
  part('Filtration', 'Asynchronous pump, 2,600 gph', '2', 'each', '242.32', '484.64'),
];

export function quoteInput(changes: Partial<QuoteDocumentInput> = {}): QuoteDocumentInput {
  return {
    company: COMPANY,
    customer: CUSTOMER,
    site: SITE,
    number: 'Q-1042',
    revision: 2,
    issuedOn: '2027-03-01',
    validUntil: '2027-04-12',
    title: 'Renovation of the lower garden pond: clean-out, new underlayment, skimmer and pumps',
    currency: 'USD',
    scope: null,
    ...sums(WORKED_LINES, '6.25'),
    ...changes,
  };
}

export function invoiceInput(changes: Partial<InvoiceDocumentInput> = {}): InvoiceDocumentInput {
  return {
    company: COMPANY,
    customer: CUSTOMER,
    site: SITE,
    number: 'INV-311',
    jobNumber: 'J-77',
    quoteNumber: 'Q-1042',
    issuedOn: '2027-05-20',
    dueOn: '2027-06-19',
    title: 'Renovation of the lower garden pond',
    currency: 'USD',
    ...sums(WORKED_LINES, '6.25'),
    paidTotal: '1000.00',
    balanceDue: '4726.99',
    paymentTerms: 'By check to the address above, or by bank transfer: routing 021000021, account 000 555 0142.',
    ...changes,
  };
}

/** `count` lines over eight cost codes, with amounts that differ by `seed`. */
export function manyLines(count: number, seed = 0): DocumentLine[] {
  const perCode = Math.ceil(count / CODES.length);
  return Array.from({ length: count }, (_, index) => {
    const code = CODES[Math.floor(index / perCode)] ?? 'Other';
    const cents = ((index + 1) * 7919 + seed * 104729) % 250_000;
    const price = decimal(cents).div(100).toFixed(2);
    if (index % perCode === 0) return labor(code, `${code}: all labor for this part of the work`, '7.75', price);
    const quantity = String((index % 12) + 1);
    const amount = decimal(price).times(quantity).toFixed(2);
    return part(code, `${ITEMS[index % ITEMS.length] ?? ''}, item ${index + 1}`, quantity, 'each', price, amount);
  });
}

/** The totals of lines of which the parts and others are taxed at `rate` percent. */
export function sums(lines: readonly DocumentLine[], rate: string) {
  const total = (some: readonly DocumentLine[]) => sumDecimals(some.map((line) => decimal(line.amount)));
  const base = total(lines.filter((line) => line.kind !== 'labor'));
  const tax = base.times(rate).div(100).toDecimalPlaces(2);
  const taxes = [{ name: 'Sales tax', rate, base: base.toFixed(2), tax: tax.toFixed(2) }];
  return { lines, netTotal: total(lines).toFixed(2), taxes, grossTotal: total(lines).plus(tax).toFixed(2) };
}

export function labor(costCode: string, description: string, hours: string, amount: string): DocumentLine {
  return { costCode, kind: 'labor', description, quantity: hours, unit: 'h', unitPrice: '68.00', amount };
}

export function part(costCode: string, description: string, quantity: string, unit: string, unitPrice: string, amount: string): DocumentLine {
  return { costCode, kind: 'part', description, quantity, unit, unitPrice, amount };
}

const CODES = ['Clean-out', 'Hauling', 'Liner', 'Plumbing', 'Filtration', 'Waterfall', 'Edge', 'Planting'];
const ITEMS = [
  'Flexible pipe, 2 in',
  'Bulkhead fitting with gasket',
  'Boulders, 18–24 in, set by hand',
  'River gravel, washed, delivered and spread over the shelf and the floor',
  'Ball valve, union, and the couplings that go with it',
];
