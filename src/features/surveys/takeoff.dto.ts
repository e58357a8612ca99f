import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { Transform } from 'class-transformer';
import { ChoiceField, NumberField } from '../../platform/http/fields/index.js';
import { TakeoffByPlaceView } from './sediment-by-place.dto.js';
import { TakeoffFigure } from './takeoff-figure.js';
import { TakeoffMaterialsView } from './takeoff-materials.dto.js';

/** A number in a query string; what is none is left for the check to refuse. */
function QueryNumber(): PropertyDecorator {
  return Transform(({ value }: { value: unknown }) => (typeof value === 'string' && /^\d{1,6}(\.\d{1,6})?$/.test(value) ? Number(value) : value));
}

export class TakeoffQuery {
  @ChoiceField({ description: 'The units to answer in; the company\'s unless told.', of: ['us', 'metric'], optional: true })
  units?: 'us' | 'metric';

  @QueryNumber()
  @NumberField({ description: 'What the box of the truck holds, level, in yd3 or, in metric units, m3; 10 yd3 unless told (common practice).', min: 0.1, max: 100, optional: true })
  truckVolume?: number;

  @QueryNumber()
  @NumberField({ description: 'What the truck may legally carry, in ton or, in metric units, t; 7 ton unless told (common practice).', min: 0.1, max: 100, optional: true })
  truckPayload?: number;
}

@ApiSchema({ name: 'Takeoff', description: 'The quantities computed from a survey. Those that need rod readings are null without them.' })
export class TakeoffView extends TakeoffMaterialsView {
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

  @ApiProperty({ type: TakeoffByPlaceView, nullable: true, description: 'Sediment and water by where the readings were taken; null when none has a place inside a polygon or two-stake outline.' })
  sedimentByPlace: TakeoffByPlaceView | null;

  @ApiProperty({ type: 'array', items: { type: 'string' }, description: 'What to look at again before pricing from these figures.' })
  warnings: string[];
}
