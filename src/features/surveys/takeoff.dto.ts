import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ChoiceField } from '../../platform/http/fields/index.js';
import { TakeoffByPlaceView } from './sediment-by-place.dto.js';
import { TakeoffFigure } from './takeoff-figure.js';

export class TakeoffQuery {
  @ChoiceField({ description: 'The units to answer in; the company\'s unless told.', of: ['us', 'metric'], optional: true })
  units?: 'us' | 'metric';
}

@ApiSchema({ name: 'Takeoff', description: 'The quantities computed from a survey. Those that need rod readings are null without them.' })
export class TakeoffView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The survey.' })
  surveyId: string;

  @ApiProperty({ type: TakeoffFigure, description: 'The water surface at the full-water line, in ft2 or m2.' })
  surfaceArea: TakeoffFigure;

  @ApiProperty({ type: TakeoffFigure, description: 'The length of the edge, in ft or m.' })
  perimeter: TakeoffFigure;

  @ApiProperty({ type: TakeoffFigure, nullable: true, description: 'The mean thickness of the sediment, in in or cm.' })
  sedimentMeanThickness: TakeoffFigure | null;

  @ApiProperty({ type: TakeoffFigure, nullable: true, description: 'The sediment in place, before digging, in yd3 or m3.' })
  sedimentVolume: TakeoffFigure | null;

  @ApiProperty({ type: TakeoffFigure, nullable: true, description: 'The mean depth to the hard bottom, in in or cm.' })
  meanDepth: TakeoffFigure | null;

  @ApiProperty({ type: TakeoffFigure, nullable: true, description: 'The greatest depth to the hard bottom of all readings, in in or cm.' })
  maxDepth: TakeoffFigure | null;

  @ApiProperty({ type: TakeoffFigure, nullable: true, description: 'The water when full, after clean-out, in gal or L.' })
  waterVolume: TakeoffFigure | null;

  @ApiProperty({ type: TakeoffFigure, nullable: true, description: 'The water when full, as found, above the sediment, in gal or L.' })
  waterVolumeNow: TakeoffFigure | null;

  @ApiProperty({ type: TakeoffFigure, nullable: true, description: 'One sheet of liner, in ft2 or m2: straight sides to the greatest depth and 1 ft over the edge on each side (common practice).' })
  linerSheetArea: TakeoffFigure | null;

  @ApiProperty({ type: TakeoffFigure, description: 'Stone to buy for an edge 1 ft high and 1 ft thick along the perimeter, in ton or t, less the reclaimed stone that was weighed. Rock of 2,643 kg/m3 with 30 % gaps (common practice).' })
  edgeStoneWeight: TakeoffFigure;

  @ApiProperty({ type: TakeoffFigure, nullable: true, description: 'The sediment once it is dug, in yd3 or m3: 25 % more than in place (10 to 40 % is published).' })
  sedimentVolumeDug: TakeoffFigure | null;

  @ApiProperty({ type: TakeoffFigure, nullable: true, description: 'The weight of the sediment as it lies, in ton or t, for a water content of 150 % of the dry solids (an assumption).' })
  sedimentWeight: TakeoffFigure | null;

  @ApiProperty({ type: TakeoffByPlaceView, nullable: true, description: 'Sediment and water by where the readings were taken; null when none has a place inside a polygon or two-stake outline.' })
  sedimentByPlace: TakeoffByPlaceView | null;

  @ApiProperty({ type: 'array', items: { type: 'string' }, description: 'What to look at again before pricing from these figures.' })
  warnings: string[];
}
