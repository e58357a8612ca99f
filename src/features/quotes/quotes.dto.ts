import { ApiSchema } from '@nestjs/swagger';
import { BooleanField, CostCodeField, DecimalField, IdField, IntegerField, ListField, LocalDateField, type MoneyBody, MoneyField, OwnIdField, TextField, TextListField } from '../../platform/http/fields/index.js';
import type { Asked } from './asked.js';
import { SectionKeyField } from './section-key.js';

const QUANTITY = { max: '1000000', scale: 4 };
const ID_OF_RULE = 'The labor rule to use; without one, the cost code\'s rule that was in force on the survey\'s date.';
const IN_SECTION = { description: 'The key of the section that it belongs to, one of `sections`; without one it is taken in any case.', optional: true };

@ApiSchema({ name: 'QuoteSectionInput', description: 'A part of the scope that the customer may take or leave as a whole.' })
export class SectionBody {
  @SectionKeyField({ description: 'What items and the acceptance call it by; once in a quote.' })
  key: string;

  @TextField({ description: 'What stands on the document.', max: 200, example: 'Waterfall and stream' })
  title: string;

  @IntegerField({ description: 'The phase that it belongs to, from 1. What is not optional in phase 1 is always taken; a later phase can be left for later.', min: 1, max: 50, optional: true, default: 1 })
  phase?: number | null;

  @BooleanField({ description: 'Whether it is left out of the totals, and not taken unless the acceptance names it.', optional: true, default: false })
  optional?: boolean | null;
}

@ApiSchema({ name: 'QuoteLaborInput', description: 'Labor to be priced by a rule.' })
export class LaborItemBody {
  @CostCodeField({ description: 'The cost code that the hours are planned for.' })
  costCode: string;

  @IdField({ description: ID_OF_RULE, optional: true })
  ruleId?: string | null;

  @DecimalField({ ...QUANTITY, min: '0', description: 'How many (each), for a rule that counts; 1 when missing. Other rules take their quantity from the survey.', optional: true, example: '2' })
  quantity?: string | null;

  @TextField({ description: 'What stands on the document; the rule\'s name when missing.', max: 500, optional: true })
  description?: string | null;

  @SectionKeyField(IN_SECTION)
  section?: string | null;
}

@ApiSchema({ name: 'QuotePartInput', description: 'A part of the catalog to be priced.' })
export class PartItemBody {
  @IdField({ description: 'The part.' })
  partId: string;

  @DecimalField({ ...QUANTITY, min: '0', above: true, description: 'How much is needed, in the part\'s unit; it is rounded up to whole packs.', example: '640' })
  quantity: string;

  @CostCodeField({ description: 'The cost code that the purchase is planned for.', example: 'liner' })
  costCode: string;

  @SectionKeyField(IN_SECTION)
  section?: string | null;
}

@ApiSchema({ name: 'QuoteOtherInput', description: 'Anything else with a price: disposal, rental, a discount.' })
export class OtherItemBody {
  @TextField({ description: 'What stands on the document.', max: 500, example: 'Disposal of sediment' })
  description: string;

  @DecimalField({ ...QUANTITY, min: '-1000000', description: 'How many; below zero takes something back.', example: '1' })
  quantity: string;

  @MoneyField({ description: 'What one sells for, in the company\'s currency; below zero is a discount.' })
  unitPrice: MoneyBody;

  @MoneyField({ description: 'What one costs the company, in its currency; 0 when missing.', sign: 'not-negative', optional: true })
  unitCost?: MoneyBody | null;

  @TextField({ description: 'The code of the tax category, one of the company\'s; none when it is not taxed.', max: 40, optional: true, example: 'materials' })
  taxCategory?: string | null;

  @CostCodeField({ description: 'The cost code that the cost is planned for.', example: 'hauling' })
  costCode: string;

  @SectionKeyField(IN_SECTION)
  section?: string | null;
}

/** The fields that say what is priced, alike for a new quote and a new revision. */
abstract class PricedBody {
  @IdField({ description: 'The survey whose takeoff, access factor and date the price comes from. It may be missing when no labor needs a takeoff.', optional: true })
  surveyId?: string | null;

  @IdField({ description: 'The feature that the work is at, when there is no survey to tell it.', optional: true })
  featureId?: string | null;

  @LocalDateField({ description: 'The last day on which the quote can be accepted, in the site\'s time zone. When missing, 30 days from the issue.', optional: true, example: '2027-05-12' })
  validUntil?: string | null;

  @ListField(() => SectionBody, { description: 'The sections of the scope, base or optional, in phases. Without any the quote is taken or left as a whole.', most: 50, optional: true })
  sections?: SectionBody[] | null;

  @ListField(() => LaborItemBody, { description: 'Labor, priced by rules.', most: 100, optional: true })
  labor?: LaborItemBody[] | null;

  @ListField(() => PartItemBody, { description: 'Parts of the catalog, at their cost of today.', most: 500, optional: true })
  parts?: PartItemBody[] | null;

  @ListField(() => OtherItemBody, { description: 'Anything else with a price.', most: 500, optional: true })
  other?: OtherItemBody[] | null;
}

const TITLE = { description: 'What the work is, as it stands on the document.', max: 200, example: 'Renovation of the lower pond' };

@ApiSchema({ name: 'QuoteInput' })
export class QuoteBody extends PricedBody implements Asked {
  @OwnIdField()
  id?: string | null;

  @TextField(TITLE)
  title: string;
}

@ApiSchema({ name: 'QuoteRevisionInput', description: 'What changes from the revision before. A field left out stays as it was; a list that is given replaces the old one; null takes `surveyId`, `featureId` or `validUntil` away.' })
export class ReviseQuoteBody extends PricedBody {
  @TextField({ ...TITLE, optional: true })
  title?: string | null;

  @TextField({ description: 'Why there is a new revision, for the office; it does not stand on the document.', max: 1000, optional: true, example: 'Customer wants the pumps left out' })
  reason?: string | null;
}

@ApiSchema({ name: 'QuoteAcceptanceInput' })
export class AcceptQuoteBody {
  @TextField({ description: 'Who accepted, by name.', max: 200, example: 'Marta Ellingsworth' })
  acceptedBy: string;

  @LocalDateField({ description: 'The day of the acceptance, in the site\'s time zone.' })
  acceptedOn: string;

  @TextListField({ description: 'The keys of the sections that are taken; all that are not optional when missing. What is not optional in phase 1 must be among them. The job, its contract and the invoice follow what is taken; what is left out stays in the quote, and is ordered later by another quote.', most: 50, maxLength: 40, optional: true, example: ['circulation', 'waterfall'] })
  sections?: string[] | null;
}
