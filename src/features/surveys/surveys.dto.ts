import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { OUTLINE_SHAPES, type Outline, type Probes } from '../../domain/trade/index.js';
import { DecimalField, Field, IdField, ListField, LocalDateField, NestedField, OwnIdField, TextListField } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';
import { DepthPointBody, EquipmentConditionBody, PipeRunBody, ReclaimedMaterialBody, WaterTestBody } from './inputs/index.js';
import { OUTLINE_SCHEMA, PROBES_SCHEMA } from './outline.schema.js';

const OUTLINE = 'The edge of the feature: a rectangle or an ellipse by its full axes, a polygon, tape distances from two stakes, or area and perimeter measured elsewhere.';
const PROBES = 'Rod readings below the full-water line. Without them the takeoff has no depths and no volumes.';
const PROFILE = 'Depths along a straight line from edge to edge; the same distance twice is the face of a shelf.';
const PIPE_RUN = 'The pipes of the circulation, their fittings and the lift.';
const CONDITION = 'How the equipment was found, one entry a piece.';
const RECLAIMED = 'What is on the site and can be used again.';
const TESTS = 'Tests of the water.';

/**
 * Left to the domain's readers, which run when the row is made: a body may hold tens of thousands of readings before
 * the bound is seen, and they report every wrong one at its own place.
 */
const unread = (): null => null;

@ApiSchema({ name: 'SurveyInput' })
export class SurveyBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'The feature that was measured.' })
  featureId: string;

  @LocalDateField({ description: 'The day it was measured. A quote goes by the labor rules of this day.' })
  surveyedOn: string;

  @Field({ description: OUTLINE, example: { shape: 'ellipse', length: { value: 24, unit: 'ft' }, width: { value: 16, unit: 'ft' } } }, OUTLINE_SCHEMA, unread)
  outline: unknown;

  @Field({ description: PROBES, optional: true, example: { unit: 'in', readings: [{ toSediment: 18, toBottom: 27 }] } }, PROBES_SCHEMA, unread)
  probes?: unknown;

  @DecimalField({ description: 'How much longer labor takes here than where access is easy, as a factor.', min: '0.5', max: '10', scale: 4, optional: true, default: '1', example: '1.15' })
  accessFactor?: string | null;

  @TextListField({ description: 'What was found, one thing an item.', most: 100, maxLength: 1000, optional: true, example: ['Liner torn at the waterfall', 'Roots in the skimmer'] })
  findings?: string[] | null;

  @ListField(() => DepthPointBody, { description: PROFILE, fewest: 2, most: 200, optional: true })
  depthProfile?: DepthPointBody[] | null;

  @NestedField(() => PipeRunBody, { description: PIPE_RUN, optional: true })
  pipeRun?: PipeRunBody | null;

  @ListField(() => EquipmentConditionBody, { description: CONDITION, most: 50, optional: true })
  equipmentCondition?: EquipmentConditionBody[] | null;

  @ListField(() => ReclaimedMaterialBody, { description: RECLAIMED, most: 50, optional: true })
  reclaimedMaterials?: ReclaimedMaterialBody[] | null;

  @ListField(() => WaterTestBody, { description: TESTS, most: 50, optional: true })
  waterTests?: WaterTestBody[] | null;
}

class SurveyBase {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The survey.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The feature that was measured.' })
  featureId: string;

  @ApiProperty({ type: 'string', format: 'date', description: 'The day it was measured.' })
  surveyedOn: string;

  @ApiProperty({ type: 'string', description: 'How much longer labor takes here than where access is easy, as a factor.' })
  accessFactor: string;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the survey was entered.' })
  createdAt: string;
}

@ApiSchema({ name: 'Survey', description: 'What was measured at a feature on a day.' })
export class SurveyView extends SurveyBase {
  @ApiProperty({ description: OUTLINE, ...OUTLINE_SCHEMA })
  outline: Outline;

  @ApiProperty({ description: PROBES, nullable: true, ...PROBES_SCHEMA })
  probes: Probes | null;

  @ApiProperty({ type: 'array', items: { type: 'string' }, maxItems: 100, description: 'What was found, one thing an item.' })
  findings: string[];

  @ApiProperty({ type: () => [DepthPointBody], description: PROFILE, nullable: true, maxItems: 200 })
  depthProfile: DepthPointBody[] | null;

  @ApiProperty({ type: () => PipeRunBody, description: PIPE_RUN, nullable: true })
  pipeRun: PipeRunBody | null;

  @ApiProperty({ type: () => [EquipmentConditionBody], description: CONDITION, maxItems: 50 })
  equipmentCondition: EquipmentConditionBody[];

  @ApiProperty({ type: () => [ReclaimedMaterialBody], description: RECLAIMED, maxItems: 50 })
  reclaimedMaterials: ReclaimedMaterialBody[];

  @ApiProperty({ type: () => [WaterTestBody], description: TESTS, maxItems: 50 })
  waterTests: WaterTestBody[];
}

@ApiSchema({ name: 'SurveySummary', description: 'A survey in a list: without its points, readings and findings, of which there can be thousands.' })
export class SurveySummary extends SurveyBase {
  @ApiProperty({ type: 'string', enum: [...OUTLINE_SHAPES], description: 'How the outline was given.' })
  outlineShape: Outline['shape'];

  @ApiProperty({ type: 'integer', description: 'How many rod readings there are.' })
  readingCount: number;

  @ApiProperty({ type: 'integer', description: 'How many findings there are.' })
  findingCount: number;
}

export class SurveyListQuery extends ListQuery {
  @IdFilter('Only the surveys of this feature.')
  featureId?: string;
}
