import type { DocumentCompany, DocumentCustomer, DocumentSite } from './parts.js';

/** What a slice hands over; structural, so that this one depends on no other slice. */
interface CompanyRecord extends Omit<DocumentCompany, 'addressLines'> {
  readonly address: string;
}

interface CustomerRecord extends Omit<DocumentCustomer, 'addressLines'> {
  readonly billingAddress: string | null;
}

export function documentCompany({ name, address, phone, email, licenceNumber, locale, paperSize }: CompanyRecord): DocumentCompany {
  return { name, addressLines: linesOf(address), phone, email, licenceNumber, locale, paperSize };
}

export function documentCustomer({ name, billingAddress, email, phone }: CustomerRecord): DocumentCustomer {
  return { name, addressLines: linesOf(billingAddress), email, phone };
}

export function documentSite(site: { readonly address: string | null }, feature: { readonly name: string; readonly kind: string }): DocumentSite {
  return { addressLines: linesOf(site.address), featureName: feature.name, featureKind: feature.kind };
}

/** "start-up" as a heading: "Start-up". The codes are the company's own words, so nothing is translated. */
export function costCodeTitle(costCode: string): string {
  return costCode.charAt(0).toUpperCase() + costCode.slice(1);
}

function linesOf(text: string | null): string[] {
  return (text ?? '').split(/\r?\n/).map((line) => line.trim()).filter((line) => line !== '');
}
