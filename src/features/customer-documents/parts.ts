/** The plain values a document is composed from. Amounts are decimal text in the currency's own digits. */
export interface DocumentCompany {
  readonly name: string;
  readonly addressLines: readonly string[];
  readonly phone: string | null;
  readonly email: string | null;
  readonly licenceNumber: string | null;
  /** BCP 47: how numbers and dates are written. */
  readonly locale: string;
  readonly paperSize: 'letter' | 'a4';
}

export interface DocumentCustomer {
  readonly name: string;
  readonly addressLines: readonly string[];
  readonly email: string | null;
  readonly phone: string | null;
}

export interface DocumentSite {
  readonly addressLines: readonly string[];
  readonly featureName: string;
  readonly featureKind: string;
}

export interface DocumentLine {
  /** The cost code's name as a customer reads it; lines with the same one stand together. */
  readonly costCode: string;
  readonly kind: 'labor' | 'part' | 'other';
  readonly description: string;
  readonly quantity: string | null;
  readonly unit: string | null;
  readonly unitPrice: string | null;
  readonly amount: string;
}

export interface DocumentTax {
  readonly name: string;
  /** Percent: "6.25". */
  readonly rate: string;
  readonly base: string;
  readonly tax: string;
}
