import { ApiProperty } from '@nestjs/swagger';
import { TakeoffFigure } from './takeoff-figure.js';

const figure = (description: string): PropertyDecorator => ApiProperty({ type: TakeoffFigure, description });
const figureOrNull = (description: string): PropertyDecorator => ApiProperty({ type: TakeoffFigure, nullable: true, description });

/** What a takeoff says of the materials to buy, to move and to haul; null where depths were not measured. */
export class TakeoffMaterialsView {
  @figureOrNull('One sheet of liner, in ft2 or m2: straight sides to the greatest depth and 1 ft over the edge on each side (common practice). Null without a depth, or without the length and width of the outline.')
  linerSheetArea: TakeoffFigure | null;

  @figureOrNull('The length of that sheet, in ft or m.')
  linerSheetLength: TakeoffFigure | null;

  @figureOrNull('The width of that sheet, in ft or m.')
  linerSheetWidth: TakeoffFigure | null;

  @figureOrNull('One layer of underlayment under the whole sheet, in ft2 or m2. Less when it stops at the water line: see the calculation liner-sheet.')
  underlaymentArea: TakeoffFigure | null;

  @figure('Stone for an edge 1 ft high and 1 ft thick along the perimeter, in ton or t. Rock of 2,643 kg/m3 with 30 % gaps (common practice).')
  edgeStoneNeeded: TakeoffFigure;

  @figure('Stone to buy for that edge, in ton or t: what it needs less the reclaimed stone that was weighed or heaped.')
  edgeStoneWeight: TakeoffFigure;

  @figure('The gaps in that edge, in yd3 or m3: what gravel or soil may fill.')
  edgeVoidVolume: TakeoffFigure;

  @figure('Stone on the site that can be used again, in ton or t: what was weighed, and what was heaped at the density and gaps of that edge. Stones that were only counted are not in it.')
  reclaimedStoneWeight: TakeoffFigure;

  @figureOrNull('The sediment once it is dug, in yd3 or m3: 25 % more than in place (10 to 40 % is published).')
  sedimentVolumeDug: TakeoffFigure | null;

  @figureOrNull('The weight of the sediment as it lies, in ton or t, for a water content of 150 % of the dry solids (an assumption).')
  sedimentWeight: TakeoffFigure | null;

  @figureOrNull('The sediment once it has drained to a water content of 100 % of the dry solids (an assumption), in yd3 or m3, before it is loaded again.')
  sedimentVolumeDrained: TakeoffFigure | null;

  @figureOrNull('The weight of the drained sediment, in ton or t.')
  sedimentWeightDrained: TakeoffFigure | null;

  @figureOrNull('The loads of the truck that take the sediment away as dug: by volume or by weight, whichever is full first.')
  haulLoads: TakeoffFigure | null;

  @figureOrNull('The loads of the truck when the sediment has drained; it bulks by 25 % again when it is loaded.')
  haulLoadsDrained: TakeoffFigure | null;
}
