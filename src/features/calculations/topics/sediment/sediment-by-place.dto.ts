import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../../../domain/quantity/index.js';
import { EDGE_KINDS } from '../../../../domain/trade/sediment/index.js';
import { ChoiceField, Field, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { OUTLINE_SCHEMA, PROBES_SCHEMA } from '../../../surveys/index.js';
import { ComputedView } from '../../computed.view.js';

/** Left to the domain's readers, which report every wrong point and reading at its own place. */
const unread = (): null => null;

@ApiSchema({ name: 'SedimentByPlaceInput' })
export class SedimentByPlaceBody {
  @Field({ description: 'The edge of the pond, as in a survey. Only a polygon and a two-stake outline have axes to place readings in.', example: { shape: 'polygon', unit: 'ft', points: [[0, 0], [20, 0], [20, 12], [0, 12]] } }, OUTLINE_SCHEMA, unread)
  outline: unknown;

  @Field({ description: 'Rod readings below the full-water line, as in a survey. Those within 5 cm of the outline are taken as readings at the shore.', example: { unit: 'in', readings: [{ at: [6, 5], toSediment: 18, toBottom: 27 }] } }, PROBES_SCHEMA, unread)
  probes: unknown;

  @ChoiceField({ description: 'What stands at the shore where no reading was taken. zero: sediment and water run out there, as in a shelving pond. nearest: both are as at the nearest reading, as with upright sides. given: both are as edgeThickness and edgeDepth say. shore-readings: they change evenly from one reading at the shore to the next.', of: EDGE_KINDS })
  edge: (typeof EDGE_KINDS)[number];

  @QuantityField({ description: 'Thickness of the sediment at the shore; with the edge "given" only, and needed there.', kind: 'length', minSi: 0, maxSi: 10, optional: true })
  edgeThickness?: Quantity | null;

  @QuantityField({ description: 'Depth to the hard bottom at the shore, not less than the thickness; with the edge "given" only, and needed there.', kind: 'length', minSi: 0, maxSi: 30, optional: true })
  edgeDepth?: Quantity | null;
}

@ApiSchema({ name: 'SedimentByPlace' })
export class SedimentByPlaceView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'The sediment in place by the triangles between the readings, in yd3.' })
  sedimentByPlace: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The sediment in place as surface area × mean of all readings, in yd3: what a survey\'s takeoff and its prices go by.' })
  sedimentByMean: Quantity;

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'The standard error of the sediment by the mean, in yd3, the readings taken as random; null for a single reading.' })
  standardError: Quantity | null;

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'Half the width of the 90 % interval of the sediment by the mean, in yd3.' })
  halfInterval: Quantity | null;

  @ApiProperty({ type: 'number', nullable: true, description: 'The same in percent of the volume; null without sediment.' })
  halfIntervalPercent: number | null;

  @ApiProperty({ type: 'integer', nullable: true, description: 'The number of further readings that bring the 90 % interval within 15 percent of the volume either way, if they vary as the present ones do.' })
  extraReadings: number | null;

  @ApiProperty({ type: QuantityBody, description: 'The water when full, after clean-out, by the triangles, in gal.' })
  waterByPlace: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The water when full, as found, above the sediment, by the triangles, in gal.' })
  waterNowByPlace: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The water when full, after clean-out, as surface area × mean depth, in gal.' })
  waterByMean: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The water surface, in ft2.' })
  surfaceArea: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The surface that the triangles cover, in ft2.' })
  coveredArea: Quantity;

  @ApiProperty({ type: 'integer', description: 'The number of triangles inside the outline.' })
  triangles: number;

  @ApiProperty({ type: 'integer', description: 'The number of different places of readings.' })
  places: number;
}
