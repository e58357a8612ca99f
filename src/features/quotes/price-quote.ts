import { Injectable } from '@nestjs/common';
import { DomainError } from '../../domain/errors.js';
import { quoteTotals } from '../../domain/pricing/index.js';
import type { Actor } from '../../platform/auth/actor.js';
import { invalidInput, noSuchReference } from '../../platform/http/problems.js';
import { type PartEntity, PartsService } from '../catalog/index.js';
import { CompaniesService, type CompanyEntity, taxCategoriesOf } from '../companies/index.js';
import { SurveysService } from '../surveys/index.js';
import { type Asked, type AskedPart, askedOf } from './asked.js';
import { LaborRulesFor } from './labor-rules-for.js';
import { priceOther, pricePart } from './price-goods.js';
import { priceLabor } from './price-labor.js';
import { QuotePlaces } from './quote-place.js';
import type { NewLine, Place, RevisionValues } from './quotes.repository.js';

export interface PricedQuote {
  readonly place: Place;
  /** What the revision says, without its number and state. */
  readonly values: RevisionValues;
  readonly lines: readonly NewLine[];
}

/** Prices what was asked for: rules as of the survey's date, parts at their cost of now. Writes nothing. */
@Injectable()
export class PriceQuote {
  constructor(
    private readonly companies: CompaniesService,
    private readonly places: QuotePlaces,
    private readonly surveys: SurveysService,
    private readonly rules: LaborRulesFor,
    private readonly parts: PartsService,
  ) {}

  /**
   * @param madeOn YYYY-MM-DD: the day whose rules apply when there is no survey
   * @throws Problem 400 or 422 with the place in the request
   */
  async execute(actor: Actor, input: Asked, madeOn: string): Promise<PricedQuote> {
    const asked = askedOf(input);
    const company = await this.companies.current(actor);
    const { survey, ...place } = await this.places.of(actor, asked);
    const rulesAsOf = survey?.surveyedOn ?? madeOn;
    const labor = await this.rules.find(actor, asked.labor ?? [], rulesAsOf);
    const parts = await this.partsOf(actor, asked.parts ?? []);
    const measured = survey && { survey, takeoff: this.surveys.takeoff(survey) };
    const lines = [
      ...labor.map(({ item, rule }, i) => priceLabor(item, rule, measured, company, `/labor/${i}`)),
      ...parts.map(({ item, part }, i) => pricePart(item, part, company, `/parts/${i}`)),
      ...(asked.other ?? []).map((item, i) => priceOther(item, company, `/other/${i}`)),
    ];
    const { title, validUntil } = asked;
    const said = { surveyId: survey?.id ?? null, title, validUntil: validUntil ?? null, rulesAsOf, asked, currency: company.currency };
    return { place, values: { ...said, ...totalsOf(lines, company) }, lines };
  }

  private async partsOf(actor: Actor, items: readonly AskedPart[]): Promise<{ item: AskedPart; part: PartEntity }[]> {
    const found = await this.parts.findMany(actor, items.map(({ partId }) => partId.toLowerCase()));
    return items.map((item, index) => {
      const part = found.get(item.partId.toLowerCase());
      if (part === undefined) throw noSuchReference(`/parts/${index}/partId`, 'part');
      return { item, part };
    });
  }
}

function totalsOf(lines: readonly NewLine[], company: CompanyEntity): Pick<RevisionValues, 'netTotal' | 'taxTotal' | 'grossTotal' | 'taxes'> {
  try {
    const taxable = lines.map(({ taxCategory, amount }) => ({ category: taxCategory, amount }));
    const { netTotal, taxTotal, grossTotal, taxes } = quoteTotals(taxable, taxCategoriesOf(company), company.currency);
    const stored = taxes.map(({ category, name, rate, base, tax }) => ({ category, name, rate: rate.toFixed(), base: base.toFixed(), tax: tax.toFixed() }));
    return { netTotal, taxTotal, grossTotal, taxes: stored };
  } catch (error) {
    // The lines of the price are no field of the request: the complaint is about the request as a whole.
    if (error instanceof DomainError) throw invalidInput(error.violations.map(({ detail }) => ({ pointer: '', detail })));
    throw error;
  }
}
