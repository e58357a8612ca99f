import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { within } from '../../../../domain/errors.js';
import { fromSi, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { parseOutline } from '../../../../domain/trade/index.js';
import { LEAST_MIL, linerSheet, outlineSpans, sheetMargin, thicknessWarnings, type LinerMaterial } from '../../../../domain/trade/liner/index.js';
import { ChoiceField, Field, IntegerField, ListField, NestedField, NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';

const OUTLINE = 'The outline, as in a survey: a rectangle or ellipse by length and width, a polygon by its points, or tape distances from two stakes. Area and perimeter alone do not tell the size of a sheet.';

@ApiSchema({ name: 'ProfileStretch', description: 'One stretch of the way from the edge inward: a wall, a shelf or a slope.' })
export class ProfileStretchBody {
  @QuantityField({ description: 'How far it goes down; 0 for a shelf.', kind: 'length', minSi: 0, maxSi: 30 })
  drop: Quantity;

  @QuantityField({ description: 'How far it goes inward, level; 0 for a wall.', kind: 'length', minSi: 0, maxSi: 1000 })
  run: Quantity;
}

@ApiSchema({ name: 'Membrane', description: 'A liner by material and thickness.' })
export class MembraneBody {
  @ChoiceField({ description: 'The material.', of: Object.keys(LEAST_MIL) })
  material: LinerMaterial;

  @NumberField({ description: 'Thickness in mil (1/1000 in).', min: 1, max: 200 })
  thicknessMil: number;
}

@ApiSchema({ name: 'LinerSheetInput' })
export class LinerSheetBody {
  // The domain reads the shapes; a class for each would repeat it.
  @Field({ description: OUTLINE, example: { shape: 'rectangle', length: { value: 16, unit: 'ft' }, width: { value: 11, unit: 'ft' } } }, { type: 'object', additionalProperties: true }, () => null)
  outline: unknown;

  @ListField(() => ProfileStretchBody, { description: 'The depth profile from the edge inward, alike on every side; the deepest point comes last.', fewest: 1, most: 50 })
  profile: ProfileStretchBody[];

  @QuantityField({ description: 'How far the sheet reaches past the edge on each side; 1 ft unless told (common practice).', kind: 'length', minSi: 0, maxSi: 5, optional: true })
  overlap?: Quantity | null;

  @IntegerField({ description: 'The number of layers of underlayment; 1 unless told.', min: 0, max: 4, optional: true, default: 1 })
  underlaymentLayers?: number | null;

  @QuantityField({ description: 'How far the underlayment reaches past the edge; like the liner unless told, 0 when it stops at the edge.', kind: 'length', minSi: 0, maxSi: 5, optional: true })
  underlaymentOverlap?: Quantity | null;

  @NestedField(() => MembraneBody, { description: 'The liner that was chosen; its thickness is not looked at unless told.', optional: true })
  membrane?: MembraneBody | null;
}

@ApiSchema({ name: 'LinerSheet' })
export class LinerSheetView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'The length of the sheet, in ft.' })
  length: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The width of the sheet, in ft.' })
  width: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The area of the sheet, in ft2.' })
  area: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The length by the usual rule, span + 2 × depth + 2 × overlap, in ft; never shorter.' })
  ruleLength: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The width by the usual rule, in ft.' })
  ruleWidth: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The area of all layers of underlayment, in ft2.' })
  underlaymentArea: Quantity;
}

export const LINER_SHEET = calculation({
  name: 'liner-sheet',
  title: 'Size of a liner and its underlayment',
  description: 'Span − 2 × runs + 2 × developed length of the profile + 2 × overlap, for the rectangle around the outline that needs the smallest sheet; beside it the usual rule span + 2 × depth + 2 × overlap (common practice). Folds and waterfall laps are extra. Thickness and slope: NRCS 521A, agricultural guidance.',
  input: LinerSheetBody,
  output: LinerSheetView,
  run: (input: LinerSheetBody): LinerSheetView => {
    const profile = input.profile.map(({ drop, run }) => ({ dropM: toSi(drop), runM: toSi(run) }));
    const overlapM = toSi(input.overlap ?? { value: 1, unit: 'ft' });
    const { lengthM, widthM } = within('/outline', () => outlineSpans(parseOutline(input.outline), sheetMargin(profile, overlapM).marginM));
    const sheet = linerSheet(lengthM, widthM, profile, overlapM);
    const under = linerSheet(lengthM, widthM, profile, input.underlaymentOverlap ? toSi(input.underlaymentOverlap) : overlapM);
    const feet = (metres: number): Quantity => ({ value: fromSi(metres, 'ft'), unit: 'ft' });
    const squareFeet = (m2: number): Quantity => ({ value: fromSi(m2, 'ft2'), unit: 'ft2' });
    return {
      length: feet(sheet.lengthM),
      width: feet(sheet.widthM),
      area: squareFeet(sheet.areaM2),
      ruleLength: feet(sheet.ruleLengthM),
      ruleWidth: feet(sheet.ruleWidthM),
      underlaymentArea: squareFeet(under.areaM2 * (input.underlaymentLayers ?? 1)),
      working: sheet.working,
      warnings: [...sheet.warnings, ...(input.membrane ? thicknessWarnings(input.membrane.material, input.membrane.thicknessMil) : [])],
    };
  },
});
