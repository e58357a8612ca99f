import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { UNITS } from '../../../domain/quantity/index.js';
import { QuantityBody } from '../../../platform/http/fields/index.js';
import { HAULED_MATERIALS, type HauledMaterial } from '../loads/load.entity.js';

@ApiSchema({ name: 'LoadTotal', description: 'What was hauled of one material.' })
export class LoadTotalView {
  @ApiProperty({ type: 'string', enum: HAULED_MATERIALS, description: 'What was in the loads.' })
  material: HauledMaterial;

  @ApiProperty({ type: 'integer', description: 'How many loads, as a count.' })
  loads: number;

  @ApiProperty({ type: () => QuantityBody, nullable: true, description: 'The volume as heaped, in yd3 or m3; null when no record says one.' })
  volume: QuantityBody | null;

  @ApiProperty({ type: 'integer', description: 'How many of the loads the volume leaves out: their records say none.' })
  loadsWithoutVolume: number;

  @ApiProperty({ type: () => QuantityBody, nullable: true, description: 'The weight, in ton or t; null when no record says one.' })
  weight: QuantityBody | null;

  @ApiProperty({ type: 'integer', description: 'How many of the loads the weight leaves out.' })
  loadsWithoutWeight: number;
}

@ApiSchema({ name: 'DepthFigures', description: 'Depths below the full-water line.' })
export class DepthFiguresView {
  @ApiProperty({ type: 'integer', description: 'How many readings.' })
  readings: number;

  @ApiProperty({ type: () => QuantityBody, nullable: true, description: 'The mean depth to the hard bottom, in in or cm.' })
  meanDepth: QuantityBody | null;

  @ApiProperty({ type: () => QuantityBody, nullable: true, description: 'The greatest depth to the hard bottom, in in or cm.' })
  maxDepth: QuantityBody | null;

  @ApiProperty({ type: () => QuantityBody, nullable: true, description: 'The mean thickness of the sediment, in in or cm; none where a reading found none.' })
  sedimentMeanThickness: QuantityBody | null;
}

@ApiSchema({ name: 'DepthTotal', description: 'The depths found at one feature beside those that the quote was made from.' })
export class DepthTotalView {
  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The pond, stream or waterfall; null when the records name none.' })
  featureId: string | null;

  @ApiProperty({ type: DepthFiguresView, description: 'As found once the pond was opened up.' })
  found: DepthFiguresView;

  @ApiProperty({ type: DepthFiguresView, nullable: true, description: 'As surveyed; null at a feature that the quote\'s survey is not of.' })
  surveyed: DepthFiguresView | null;
}

@ApiSchema({ name: 'MaterialTotal', description: 'What was used of one part, or of one material by its words, beside what was quoted.' })
export class MaterialTotalView {
  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The part; null for what is not in the catalog.' })
  partId: string | null;

  @ApiProperty({ type: 'string', description: 'What it is.' })
  description: string;

  @ApiProperty({ type: 'string', enum: [...UNITS], description: 'The unit of both quantities.' })
  unit: string;

  @ApiProperty({ type: 'string', description: 'How much was used, as a decimal string.' })
  used: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'How much was quoted, in whole packs; null for what was not.' })
  quoted: string | null;
}

@ApiSchema({ name: 'FieldTotals', description: 'What the crew took down for a job, summed beside what it was planned from. Void records are left out. No prices.' })
export class FieldTotalsView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The job.' })
  jobId: string;

  @ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'The survey that the accepted quote was made from.' })
  surveyId: string | null;

  @ApiProperty({ type: [LoadTotalView], description: 'By material.' })
  loads: LoadTotalView[];

  @ApiProperty({ type: () => QuantityBody, nullable: true, description: 'The sediment that was surveyed, in place, in yd3 or m3. Dug it takes more room, drained less: compare with the volume hauled accordingly.' })
  surveyedSediment: QuantityBody | null;

  @ApiProperty({ type: [DepthTotalView], description: 'By feature.' })
  depths: DepthTotalView[];

  @ApiProperty({ type: [MaterialTotalView], description: 'The parts quoted, in the quote\'s order, then what else was used.' })
  materials: MaterialTotalView[];

  @ApiProperty({ type: 'array', items: { type: 'string' }, description: 'What to bear in mind when comparing.' })
  warnings: string[];
}
