import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { EDGE_KINDS } from '../../domain/trade/sediment/index.js';
import { TakeoffFigure } from './takeoff-figure.js';

@ApiSchema({ name: 'TakeoffByEdge', description: 'Sediment and water from the readings\' places, for one choice of the edge.' })
export class TakeoffByEdgeView {
  @ApiProperty({ type: 'string', enum: EDGE_KINDS.filter((kind) => kind !== 'given'), description: 'What stands at the shore where no reading was taken. zero: both run out there. nearest: as at the nearest reading. shore-readings: evenly from one reading at the shore to the next.' })
  edge: string;

  @ApiProperty({ type: TakeoffFigure, description: 'The sediment in place, in yd3 or m3.' })
  sedimentVolume: TakeoffFigure;

  @ApiProperty({ type: TakeoffFigure, description: 'The water when full, after clean-out, in gal or L.' })
  waterVolume: TakeoffFigure;
}

@ApiSchema({ name: 'TakeoffByPlace', description: 'Sediment and water by where the readings were taken, beside the means that prices go by.' })
export class TakeoffByPlaceView {
  @ApiProperty({ type: [TakeoffByEdgeView], description: 'By each choice of the edge that needs no further figure: bounds, of which the estimator knows which is nearer. The calculation sediment-by-place takes an edge of given thickness too.' })
  byEdge: TakeoffByEdgeView[];

  @ApiProperty({ type: TakeoffFigure, nullable: true, description: 'The standard error of sedimentVolume, in yd3 or m3, the readings taken as random; null for a single reading.' })
  standardError: TakeoffFigure | null;

  @ApiProperty({ type: 'number', nullable: true, description: 'Half the width of the 90 % interval of sedimentVolume in percent of it; null for a single reading or without sediment.' })
  halfIntervalPercent: number | null;

  @ApiProperty({ type: 'integer', nullable: true, description: 'The number of further readings that bring the 90 % interval within 15 percent either way.' })
  extraReadings: number | null;

  @ApiProperty({ type: 'array', items: { type: 'string' }, description: 'What to look at again.' })
  warnings: string[];
}
