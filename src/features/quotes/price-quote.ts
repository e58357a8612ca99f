import { Injectable } from '@nestjs/common';
import { DomainError } from '../../domain/errors.js';
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
import type { StoredSection } from './quote-revision.entity.js';
import { isBase, type QuoteSection, sectionsOf } from './quote-sections.js';
import { type QuoteSums, sumsOf } from './quote-sums.js';
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
    const sections = sectionsOf(asked);
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
    const sums = sumsFor(company, lines.filter((line) => isBase(line, sections)));
    return { place, values: { ...said, ...sums, sections: sections.map((section) => stored(section, company, lines)) }, lines };
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

/** The totals of a section on its own: what it would add, but for a cent where tax rounds otherwise on the sum. */
function stored(section: QuoteSection, company: CompanyEntity, lines: readonly NewLine[]): StoredSection {
  const { netTotal, taxTotal, grossTotal, taxes } = sumsFor(company, lines.filter((line) => line.section === section.key));
  return { ...section, netTotal: netTotal.toFixed(), taxTotal: taxTotal.toFixed(), grossTotal: grossTotal.toFixed(), taxes };
}

function sumsFor(company: CompanyEntity, lines: readonly NewLine[]): QuoteSums {
  try {
    return sumsOf(lines, taxCategoriesOf(company), company.currency);
  } catch (error) {
    // The lines of the price are no field of the request: the complaint is about the request as a whole.
    if (error instanceof DomainError) throw invalidInput(error.violations.map(({ detail }) => ({ pointer: '', detail })));
    throw error;
  }
}
