import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { MoneyBody } from '../../platform/http/fields/index.js';
import { WorkingView } from '../../platform/http/working.view.js';
import { QUOTE_STATES, type QuoteState } from './quote-revision.entity.js';

const nullableId = { type: 'string', format: 'uuid', nullable: true } as const;
const nullableDate = { type: 'string', format: 'date', nullable: true } as const;

@ApiSchema({ name: 'QuoteTax', description: 'The tax of one category: on the sum of its lines.' })
export class QuoteTaxView {
  @ApiProperty({ type: 'string', description: 'The code of the category.' })
  category: string;

  @ApiProperty({ type: 'string', description: 'The name on documents.' })
  name: string;

  @ApiProperty({ type: 'string', description: 'The rate in percent.' })
  rate: string;

  @ApiProperty({ type: MoneyBody, description: 'The sum of the lines of this category.' })
  base: MoneyBody;

  @ApiProperty({ type: MoneyBody, description: 'The tax.' })
  tax: MoneyBody;
}

@ApiSchema({ name: 'QuoteLineWorking', description: 'How the line was priced.' })
export class QuoteLineWorkingView extends WorkingView {
  @ApiProperty({ type: WorkingView, required: false, description: 'How the quantity was computed from the survey, for labor that goes by a takeoff.' })
  takeoff?: WorkingView;
}

@ApiSchema({ name: 'QuoteLine', description: 'A priced line.' })
export class QuoteLineView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The line; a draft priced anew has new lines.' })
  id: string;

  @ApiProperty({ type: 'string', enum: ['labor', 'part', 'other'], description: 'What is priced.' })
  kind: 'labor' | 'part' | 'other';

  @ApiProperty({ type: 'string', description: 'The cost code.' })
  costCode: string;

  @ApiProperty({ type: 'string', description: 'What stands on the document.' })
  description: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'What is counted, in `unit`: for a part whole packs, for labor what its rule counts, to six decimals (its working has it in full).' })
  quantity: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The unit of the quantity; null for an other line.' })
  unit: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The hours of a labor line; null for the others.' })
  hours: string | null;

  @ApiProperty({ type: MoneyBody, description: 'The price of one unit, for labor of one hour (which may have more decimals than the currency).' })
  unitPrice: MoneyBody;

  @ApiProperty({ type: MoneyBody, description: 'The price of the line, net of tax.' })
  amount: MoneyBody;

  @ApiProperty({ type: MoneyBody, nullable: true, description: 'What one unit costs the company; null for labor.' })
  unitCost: MoneyBody | null;

  @ApiProperty({ type: MoneyBody, description: 'What is bought for the line; 0 for labor.' })
  cost: MoneyBody;

  @ApiProperty({ type: 'string', nullable: true, description: 'The code of the tax category; null when it is not taxed.' })
  taxCategory: string | null;

  @ApiProperty({ ...nullableId, description: 'The labor rule; the working names its version.' })
  ruleId: string | null;

  @ApiProperty({ ...nullableId, description: 'The part; the working names its version.' })
  partId: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The key of its section; null for what is taken in any case.' })
  section: string | null;

  @ApiProperty({ type: QuoteLineWorkingView, description: 'How the line was priced.' })
  working: QuoteLineWorkingView;
}

@ApiSchema({ name: 'QuoteSummary', description: 'A quote, or one of its revisions, without its lines.' })
export class QuoteSummaryView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The quote.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'The number on documents.', example: 'Q-1001' })
  number: string;

  @ApiProperty({ type: 'integer', minimum: 1, description: 'The revision.' })
  revision: number;

  @ApiProperty({ type: 'string', enum: [...QUOTE_STATES], description: 'The state of the revision. A draft may change; an issued one can be accepted until it is superseded.' })
  state: QuoteState;

  @ApiProperty({ type: 'integer', nullable: true, description: 'The revision that took this one\'s place; null while there is none.' })
  supersededByRevision: number | null;

  @ApiProperty({ type: 'string', description: 'What the work is.' })
  title: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'Why the revision was made.' })
  reason: string | null;

  @ApiProperty({ ...nullableId, description: 'The survey that was priced from.' })
  surveyId: string | null;

  @ApiProperty({ ...nullableId, description: 'The feature that the work is at.' })
  featureId: string | null;

  @ApiProperty({ ...nullableId, description: 'The site of the feature.' })
  siteId: string | null;

  @ApiProperty({ ...nullableId, description: 'The customer of the site.' })
  customerId: string | null;

  @ApiProperty({ type: 'string', description: 'The currency of all amounts, by its ISO 4217 letters.' })
  currency: string;

  @ApiProperty({ ...nullableDate, description: 'The last day on which it can be accepted, in the site\'s time zone; in a draft null until the issue sets it.' })
  validUntil: string | null;

  @ApiProperty({ type: 'string', format: 'date', description: 'The day whose labor rules apply: the survey\'s, or without a survey the day the quote was made.' })
  rulesAsOf: string;

  @ApiProperty({ ...nullableDate, description: 'The day of the issue, in the company\'s time zone.' })
  issuedOn: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'Who accepted it.' })
  acceptedBy: string | null;

  @ApiProperty({ ...nullableDate, description: 'The day of the acceptance.' })
  acceptedOn: string | null;

  @ApiProperty({ type: MoneyBody, description: 'The sum of the lines, but for those of optional sections: what is accepted when nothing is said.' })
  netTotal: MoneyBody;

  @ApiProperty({ type: MoneyBody, description: 'The sum of the taxes, without optional sections.' })
  taxTotal: MoneyBody;

  @ApiProperty({ type: MoneyBody, description: 'Net and taxes, without optional sections.' })
  grossTotal: MoneyBody;

  @ApiProperty({ type: MoneyBody, nullable: true, description: 'The sum of the lines that were taken: the contract. Null until it is accepted.' })
  acceptedNetTotal: MoneyBody | null;

  @ApiProperty({ type: MoneyBody, nullable: true, description: 'The taxes on what was taken. Null until it is accepted.' })
  acceptedTaxTotal: MoneyBody | null;

  @ApiProperty({ type: MoneyBody, nullable: true, description: 'Net and taxes of what was taken. Null until it is accepted.' })
  acceptedGrossTotal: MoneyBody | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the quote was made.' })
  createdAt: string;
}

@ApiSchema({ name: 'QuoteSection', description: 'A section with its own totals, as if it were taken alone. Tax is rounded once on all that is taken, so sections taken together may come to a cent more or less than their totals.' })
export class QuoteSectionView {
  @ApiProperty({ type: 'string', description: 'What items and the acceptance call it by.' })
  key: string;

  @ApiProperty({ type: 'string', description: 'What stands on the document.' })
  title: string;

  @ApiProperty({ type: 'integer', minimum: 1, description: 'The phase that it belongs to.' })
  phase: number;

  @ApiProperty({ type: 'boolean', description: 'Whether it is left out of the totals of the quote.' })
  optional: boolean;

  @ApiProperty({ type: MoneyBody, description: 'The sum of its lines.' })
  netTotal: MoneyBody;

  @ApiProperty({ type: MoneyBody, description: 'The taxes on its lines.' })
  taxTotal: MoneyBody;

  @ApiProperty({ type: MoneyBody, description: 'Net and taxes.' })
  grossTotal: MoneyBody;

  @ApiProperty({ type: 'boolean', nullable: true, description: 'Whether the customer took it; null until the quote is accepted.' })
  taken: boolean | null;
}

@ApiSchema({ name: 'Quote', description: 'An offer in one of its revisions.' })
export class QuoteView extends QuoteSummaryView {
  @ApiProperty({ type: [QuoteLineView], description: 'The lines: labor, parts, other.' })
  lines: QuoteLineView[];

  @ApiProperty({ type: [QuoteTaxView], description: 'The taxes, one for each category that has lines outside optional sections.' })
  taxes: QuoteTaxView[];

  @ApiProperty({ type: [QuoteSectionView], description: 'The sections, in the order in which they were given; none in a quote that is taken or left as a whole.' })
  sections: QuoteSectionView[];

  @ApiProperty({ type: [QuoteTaxView], nullable: true, description: 'The taxes on what was taken, each computed once on the sum of its lines. Null until it is accepted.' })
  acceptedTaxes: QuoteTaxView[] | null;
}

@ApiSchema({ name: 'QuoteAcceptance', description: 'What an acceptance led to.' })
export class QuoteAcceptanceView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job that the quote became.' })
  jobId: string;
}
