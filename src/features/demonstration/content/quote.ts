/** A quote of the demonstration, and how far it went. */
export interface DemoQuote {
  /** What the other content calls the quote by. */
  readonly key: string;
  readonly title: string;
  readonly feature: string;
  /** Whether it is priced from the feature's survey; else only rules that count may be used. */
  readonly surveyed: boolean;
  /** Cost codes; with a number where the rule counts. */
  readonly labor: readonly (string | readonly [costCode: string, count: string])[];
  readonly parts: readonly DemoQuotePart[];
  readonly other?: readonly DemoQuoteOther[];
  /** What the customer may take or leave; what stands outside of them is taken in any case. */
  readonly sections?: readonly DemoQuoteSection[];
  /** Working days before the day the demonstration is made on. */
  readonly madeDaysAgo: number;
  readonly issuedDaysAgo: number | null;
  readonly revised?: DemoRevision;
}

export type DemoQuotePart = readonly [sku: string, quantity: string, costCode: string];

export type DemoQuoteOther = readonly [description: string, unitPrice: string, unitCost: string, costCode: string];

export interface DemoQuoteSection extends Pick<DemoQuote, 'labor' | 'parts' | 'other'> {
  readonly key: string;
  readonly title: string;
  readonly phase: number;
  readonly optional?: boolean;
}

/** What the customer asked to be changed, and when it was issued again. */
export interface DemoRevision {
  readonly reason: string;
  readonly labor: DemoQuote['labor'];
  readonly parts: DemoQuote['parts'];
  readonly issuedDaysAgo: number;
}
