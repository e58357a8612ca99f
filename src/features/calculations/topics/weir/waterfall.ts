import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { DomainError } from '../../../../domain/errors.js';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { LIP_KINDS, LOOK_NAMES, waterfall, type LipKind, type Look, type WaterfallInput } from '../../../../domain/trade/weir/index.js';
import { ChoiceField, NestedField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';
import { inUnit } from '../hydraulics/in-us-units.js';
import { PumpCurveBody, toCurve } from '../hydraulics/pump.body.js';
import { PumpingSystemBody, toPumpingSystem } from '../hydraulics/pumping-system.body.js';

@ApiSchema({ name: 'WaterfallInput' })
export class WaterfallBody {
  @QuantityField({ description: 'The width of the lip that the water runs over.', kind: 'length', minSi: 0.01, maxSi: 100 })
  lipWidth: Quantity;

  @ChoiceField({ description: 'A sharp edge, such as a spillway\'s, or a flat stone, which needs a thicker sheet for the same flow.', of: LIP_KINDS })
  lip: LipKind;

  @ChoiceField({ description: 'The wanted look, by common practice: trickle 50, sheet 100, full-sheet 150, cascade 200 gph for each inch of lip. Either this or sheetThickness.', of: LOOK_NAMES, optional: true })
  look?: Look | null;

  @QuantityField({ description: 'The wanted thickness of the water above the lip, a little upstream of it. Either this or look.', kind: 'length', minSi: 1e-4, maxSi: 1, optional: true })
  sheetThickness?: Quantity | null;

  @NestedField(() => PumpingSystemBody, { description: 'The piping from the pump to the waterfall; with it the pump.', optional: true })
  system?: PumpingSystemBody | null;

  @NestedField(() => PumpCurveBody, { description: 'The chosen pump; with it the piping.', optional: true })
  pump?: PumpCurveBody | null;
}

@ApiSchema({ name: 'Waterfall' })
export class WaterfallView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'The flow that the look or the thickness needs, in gpm.' })
  neededFlow: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The thickness of the water above the lip, a little upstream of it, in in. The falling sheet is thinner.' })
  sheetThickness: Quantity;

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'The flow of the pump at its operating point by Hazen-Williams, in gpm; null without a pump, or when pump and piping do not meet within its curve.' })
  pumpFlow: Quantity | null;

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'The thickness of the sheet that the pump makes, in in.' })
  pumpSheetThickness: Quantity | null;

  @ApiProperty({ type: 'boolean', nullable: true, description: 'Whether the pump gives the flow needed; null without a pump.' })
  pumpGivesIt: boolean | null;
}

export const WATERFALL = calculation({
  name: 'waterfall',
  title: 'Flow and sheet of a waterfall, and whether the pump gives it',
  description: 'Q = C L h^1.5 with C 3.33 for a sharp edge (Francis) and 2.63 for a flat stone (broad crest, EPA SWMM Reference Manual), in ft and ft3/s. Garden sheets are thinner than the 0.2 ft for which weir formulas are proven, so figures are good to 25 %.',
  input: WaterfallBody,
  output: WaterfallView,
  run: (input: WaterfallBody): WaterfallView => {
    const { neededFlow, thicknessM, pumpFlow, pumpThicknessM, pumpGivesIt, working, warnings } = waterfall({ lipWidthM: toSi(input.lipWidth), lip: input.lip, wanted: wantedOf(input), pump: pumpOf(input) });
    return {
      neededFlow: inUnit(neededFlow, 'gpm'),
      sheetThickness: inUnit(thicknessM, 'in'),
      pumpFlow: inUnit(pumpFlow, 'gpm'),
      pumpSheetThickness: inUnit(pumpThicknessM, 'in'),
      pumpGivesIt,
      working,
      warnings,
    };
  },
});

function wantedOf({ look, sheetThickness }: WaterfallBody): WaterfallInput['wanted'] {
  if (look && !sheetThickness) return { look };
  if (sheetThickness && !look) return { thicknessM: toSi(sheetThickness) };
  throw DomainError.at(look ? '/sheetThickness' : '/look', 'Give either a look or a sheetThickness, not both and not neither.');
}

function pumpOf({ system, pump }: WaterfallBody): WaterfallInput['pump'] {
  if (system && pump) return { system: toPumpingSystem(system), curve: toCurve(pump.curve) };
  if (!system && !pump) return null;
  throw DomainError.at(system ? '/pump' : '/system', 'Whether the pump gives the flow takes both the pump and its piping.');
}
