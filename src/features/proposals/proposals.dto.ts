import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../domain/quantity/index.js';
import { CostCodeField, DecimalField, Field, ListField, ChoiceField, NestedField, NumberField, QuantityField } from '../../platform/http/fields/index.js';
import { HaulCycleBody } from '../calculations/index.js';
import { ScopeSectionBody } from './draft-section.dto.js';
import { ProposedDraftView } from './draft.views.js';
import { HaulComparisonView } from './haul.views.js';
import { ProposedLaborView } from './labor.views.js';
import { DesignBody } from './design.dto.js';
import { SCOPES, type Scope } from './scopes.js';

@ApiSchema({ name: 'ScopeCostCode' })
export class ScopeCostCodeBody {
  @ChoiceField({ description: 'The scope.', of: SCOPES })
  scope: Scope;

  @CostCodeField({ description: 'The cost code that its hours and parts go to.' })
  costCode: string;
}

function checkScopes(value: unknown): string | null {
  if (!Array.isArray(value) || value.length === 0) return 'must be a list of at least one scope';
  const bad = value.findIndex((scope) => !(SCOPES as readonly unknown[]).includes(scope));
  if (bad >= 0) return `/${bad}: must be one of ${SCOPES.join(', ')}`;
  const twice = value.findIndex((scope, index) => value.indexOf(scope) < index);
  return twice < 0 ? null : `/${twice}: is there twice`;
}

@ApiSchema({ name: 'ProposalInput' })
export class ProposalBody extends DesignBody {
  @Field({ description: 'What is to be done, in any order.', example: ['clean-out', 'haul-away', 'edge'] }, { type: 'array', items: { type: 'string', enum: [...SCOPES] }, minItems: 1, maxItems: SCOPES.length, uniqueItems: true }, checkScopes)
  scope: Scope[];

  @ListField(() => ScopeCostCodeBody, { description: 'Cost codes for scopes that the company calls otherwise than usual.', most: SCOPES.length, optional: true })
  costCodes?: ScopeCostCodeBody[] | null;

  @ListField(() => ScopeSectionBody, { description: 'Phases and options: the section that a scope becomes in the draft. A scope that is not listed becomes base work of phase 1.', most: SCOPES.length, optional: true })
  sections?: ScopeSectionBody[] | null;

  @NestedField(() => HaulCycleBody, { description: 'How the sediment comes from the pond to the truck, as in the calculation haul-cycle. Clean-out and haul-away then show the hours by that cycle beside the rule in force; without those scopes it is not used.', optional: true })
  haul?: HaulCycleBody | null;

  @NumberField({ description: 'In how many hours the loop is to turn the water over once; 2 unless told (1 to 2 is common practice).', min: 0.1, max: 48, optional: true, default: 2 })
  turnoverHours?: number | null;

  @QuantityField({ description: 'How much liner is to lie over the edge on each side; 1 ft unless told (common practice).', kind: 'length', minSi: 0, maxSi: 5, optional: true })
  linerOverlap?: Quantity | null;

  @QuantityField({ description: 'Height of the stone edge; 1 ft unless told.', kind: 'length', minSi: 0.02, maxSi: 5, optional: true })
  edgeHeight?: Quantity | null;

  @QuantityField({ description: 'Thickness of the stone edge, front to back; 1 ft unless told.', kind: 'length', minSi: 0.02, maxSi: 5, optional: true })
  edgeThickness?: Quantity | null;

  @DecimalField({ description: 'What a kWh costs, in the company\'s currency; pumps are compared with it. 0.15 unless told.', min: '0', max: '100', scale: 4, optional: true, default: '0.15' })
  energyRate?: string | null;
}

@ApiSchema({ name: 'ProposedLine', description: 'A part item as a quote takes it.' })
export class ProposedLineView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The part.' })
  partId: string;

  @ApiProperty({ type: 'string', description: 'Its name.' })
  name: string;

  @ApiProperty({ type: 'string', description: 'How much of it in whole packs, as a decimal string in the part\'s unit.' })
  quantity: string;

  @ApiProperty({ type: 'string', description: 'The part\'s unit.' })
  unit: string;

  @ApiProperty({ type: 'string', description: 'The cost code.' })
  costCode: string;
}

@ApiSchema({ name: 'ProposedPart', description: 'A part item with its reason.' })
export class ProposedPartView extends ProposedLineView {
  @ApiProperty({ type: 'string', description: 'Why it, and why so much.' })
  why: string;

  @ApiProperty({ type: [ProposedLineView], description: 'What is bought together with it, such as the second roll that a sheet is cut from. Mostly empty.' })
  also: ProposedLineView[];
}

@ApiSchema({ name: 'RuledOutPart', description: 'A part of the kind that would not do.' })
export class RuledOutPartView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The part.' })
  partId: string;

  @ApiProperty({ type: 'string', description: 'Its name.' })
  name: string;

  @ApiProperty({ type: 'string', description: 'Why it would not do.' })
  reason: string;
}

@ApiSchema({ name: 'ProposedChoice', description: 'One thing that is needed: what is suggested, what else would do, and what would not.' })
export class ProposedChoiceView {
  @ApiProperty({ type: 'string', description: 'The kind of part.' })
  kind: string;

  @ApiProperty({ type: 'string', description: 'What is needed, such as "4 elbow-90, 2.067 in inside".' })
  what: string;

  @ApiProperty({ type: ProposedPartView, nullable: true, description: 'The suggestion; null when the catalog has nothing that would do.' })
  suggested: ProposedPartView | null;

  @ApiProperty({ type: [ProposedPartView], description: 'What would do as well, the cheapest first (spillways: the widest lip first).' })
  alternatives: ProposedPartView[];

  @ApiProperty({ type: [RuledOutPartView], description: 'What would not do, and why.' })
  ruledOut: RuledOutPartView[];
}

@ApiSchema({ name: 'ProposedScope', description: 'What one scope takes.' })
export class ProposedScopeView {
  @ApiProperty({ type: 'string', enum: [...SCOPES], description: 'The scope.' })
  scope: Scope;

  @ApiProperty({ type: [ProposedLaborView], description: 'Labor items; reclaimed material makes one of its own, and no purchase.' })
  labor: ProposedLaborView[];

  @ApiProperty({ type: 'string', description: 'The hours of its labor items together, in h.' })
  hours: string;

  @ApiProperty({ type: HaulComparisonView, nullable: true, description: 'The rule in force beside the haul that was asked about; null for scopes that move no sediment, and when none was asked about.' })
  haul: HaulComparisonView | null;

  @ApiProperty({ type: [ProposedChoiceView], description: 'What is to be bought, a choice for each kind.' })
  parts: ProposedChoiceView[];

  @ApiProperty({ type: [String], description: 'What is missing, assumed or to be careful about.' })
  warnings: string[];
}

@ApiSchema({ name: 'Proposal', description: 'Suggested labor and parts for a survey. It is kept nowhere: its draft is what POST /v1/quotes takes, and the estimator takes from it what they like.' })
export class ProposalView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The survey.' })
  surveyId: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'The day whose labor rules apply: the survey\'s.' })
  rulesAsOf: string;

  @ApiProperty({ type: [ProposedScopeView], description: 'By scope, in the order of the work.' })
  items: ProposedScopeView[];

  @ApiProperty({ type: 'string', description: 'The hours of all scopes together, in h.' })
  hours: string;

  @ApiProperty({ type: ProposedDraftView, description: 'The suggestions in the form of a new quote, a section for each scope.' })
  draft: ProposedDraftView;
}
