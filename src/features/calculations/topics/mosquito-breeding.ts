import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { fromSi, toSi, type Quantity } from '../../../domain/quantity/index.js';
import { mosquitoBreeding } from '../../../domain/trade/life/index.js';
import { BooleanField, celsiusOf, ListField, QuantityBody, QuantityField, TemperatureField, TextField, type TemperatureBody } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { ComputedView } from '../computed.view.js';

@ApiSchema({ name: 'WaterZoneInput' })
export class WaterZoneBody {
  @TextField({ description: 'Which part of the pond it is.', max: 80, example: 'bog filter' })
  name: string;

  @QuantityField({ description: 'Its surface.', kind: 'area', minSi: 0.0001, maxSi: 1e6 })
  area: Quantity;

  @BooleanField({ description: 'Whether its surface moves or splashes; not, unless told.', optional: true, default: false })
  moving?: boolean | null;

  @BooleanField({ description: 'Whether fish that eat larvae get there; not, unless told.', optional: true, default: false })
  fish?: boolean | null;

  @BooleanField({ description: 'Whether plants or leaves choke it; not, unless told.', optional: true, default: false })
  choked?: boolean | null;
}

@ApiSchema({ name: 'MosquitoBreedingInput' })
export class MosquitoBreedingBody {
  @TemperatureField({ description: 'Temperature of the water, best its warmest.', minC: 0, maxC: 45 })
  temperature: TemperatureBody;

  @QuantityField({ description: 'The water in the pond.', kind: 'volume', minSi: 0.001, maxSi: 1e6 })
  volume: Quantity;

  @QuantityField({ description: 'The flow that circulates; none unless told.', kind: 'flow', minSi: 0, maxSi: 10, optional: true })
  flow?: Quantity | null;

  @ListField(() => WaterZoneBody, { description: 'The parts of the pond, above all those that lie out of the current.', fewest: 1, most: 50 })
  zones: WaterZoneBody[];
}

@ApiSchema({ name: 'ZoneBreeding' })
export class ZoneBreedingView {
  @ApiProperty({ type: 'string', description: 'Which part of the pond it is.' })
  name: string;

  @ApiProperty({ type: QuantityBody, description: 'Its surface, in ft2.' })
  area: Quantity;

  @ApiProperty({ type: 'boolean', description: 'Whether mosquitoes breed there.' })
  breeds: boolean;

  @ApiProperty({ type: 'string', nullable: true, description: 'Why, and what to do; null when they do not.' })
  why: string | null;
}

@ApiSchema({ name: 'MosquitoBreeding' })
export class MosquitoBreedingView extends ComputedView {
  @ApiProperty({ type: 'number', nullable: true, description: 'From egg to adult, in days; null when the water is too cold.' })
  developmentDays: number | null;

  @ApiProperty({ type: 'number', nullable: true, description: 'The longest interval at which still water should be emptied or moved, in days; null likewise.' })
  intervalDays: number | null;

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'The time in which the flow moves the water once, in h; null without a flow.' })
  turnover: Quantity | null;

  @ApiProperty({ type: 'number', nullable: true, description: 'How many times the water turns over while one brood develops; null where either is.' })
  turnoversPerBrood: number | null;

  @ApiProperty({ type: [ZoneBreedingView], description: 'Each zone, in the order given.' })
  zones: ZoneBreedingView[];

  @ApiProperty({ type: QuantityBody, description: 'The surface on which mosquitoes breed, in ft2.' })
  breedingArea: Quantity;

  @ApiProperty({ type: 'integer', description: 'How many slow-release Bti rings those zones would take: one for each started 100 ft2 of each.' })
  larvicideRings: number;
}

export const MOSQUITO_BREEDING = calculation({
  name: 'mosquito-breeding',
  title: 'Mosquito development against turnover and still zones',
  description: 'Days from egg to adult: 14 at 70 degF and 10 at 80 degF (North Dakota Department of Health), a line between, the thermal sum beyond; none below 9.8 degC (Loetti and others 2011). Interval: half of it, at most 7 days (common practice). Rings as a label has it; the label and state licensing rules decide.',
  input: MosquitoBreedingBody,
  output: MosquitoBreedingView,
  run: (input: MosquitoBreedingBody): MosquitoBreedingView => {
    const result = mosquitoBreeding({
      celsius: celsiusOf(input.temperature),
      volumeM3: toSi(input.volume),
      flowM3PerS: input.flow ? toSi(input.flow) : 0,
      zones: input.zones.map(({ name, area, moving, fish, choked }) => ({ name, areaM2: toSi(area), moving: moving ?? false, fish: fish ?? false, choked: choked ?? false })),
    });
    return {
      developmentDays: result.developmentDays,
      intervalDays: result.intervalDays,
      turnover: result.turnoverHours === null ? null : { value: result.turnoverHours, unit: 'h' },
      turnoversPerBrood: result.turnoversPerBrood,
      zones: result.zones.map(({ name, areaM2, why }) => ({ name, area: { value: fromSi(areaM2, 'ft2'), unit: 'ft2' }, breeds: why !== null, why })),
      breedingArea: { value: fromSi(result.breedingAreaM2, 'ft2'), unit: 'ft2' },
      larvicideRings: result.larvicideRings,
      working: result.working,
      warnings: result.warnings,
    };
  },
});
