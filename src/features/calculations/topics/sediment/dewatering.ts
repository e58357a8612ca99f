import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { within } from '../../../../domain/errors.js';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { loadsOf, sedimentStages } from '../../../../domain/trade/sediment/index.js';
import { NestedField, NumberField, QuantityBody } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';
import { figure } from './figures.js';
import { LoadCountView, loadsView, VehicleBody, vehicleOf } from './loads.view.js';
import { SedimentBody, SedimentStageView, stageView } from './stage.view.js';

@ApiSchema({ name: 'DewateringInput' })
export class DewateringBody extends SedimentBody {
  @NumberField({ description: 'Water after draining in percent of the dry solids by weight.', min: 10, max: 2000 })
  drainedWaterPercent: number;

  @NumberField({ description: 'How much more room the drained sediment takes when it is loaded, in percent of its drained volume: as bulkingPercent unless told.', min: 0, max: 100, optional: true })
  drainedBulkingPercent?: number | null;

  @NestedField(() => VehicleBody, { description: 'The truck or trailer.' })
  vehicle: VehicleBody;
}

@ApiSchema({ name: 'Dewatering' })
export class DewateringView extends ComputedView {
  @ApiProperty({ type: SedimentStageView, description: 'Dug and bulked, hauled wet.' })
  dug: SedimentStageView;

  @ApiProperty({ type: SedimentStageView, description: 'Drained, as it is loaded: bulked again.' })
  drainedAsLoaded: SedimentStageView;

  @ApiProperty({ type: QuantityBody, description: 'The water that runs off and has to be led somewhere lawful, in gal.' })
  drainage: Quantity;

  @ApiProperty({ type: LoadCountView, description: 'The loads if it is hauled wet.' })
  wetLoads: LoadCountView;

  @ApiProperty({ type: LoadCountView, description: 'The loads after draining.' })
  drainedLoads: LoadCountView;
}

export const DEWATERING = calculation({
  name: 'dewatering',
  title: 'Loads saved by draining the sediment',
  description: 'Drained volume = volume in place × (1 + w2 G) / (1 + w1 G) while its pores stay full of water (phase relations, any soil-mechanics text); each stage bulks once, from its own volume. Beside it the loads if it is hauled wet. What runs off is waste water in many places: ask the local authority before it leaves the site.',
  input: DewateringBody,
  output: DewateringView,
  run: (input: DewateringBody): DewateringView => {
    const bulkingPercent = input.bulkingPercent ?? 25;
    const { inPlace, dug, drained, working, warnings } = sedimentStages({
      inPlaceM3: toSi(input.inPlaceVolume),
      waterPercent: input.waterPercent ?? 150,
      drainedWaterPercent: input.drainedWaterPercent,
      gravity: input.gravity ?? 2.65,
      bulkingPercent,
    });
    const settled = drained ?? inPlace;
    const loaded = { volumeM3: settled.volumeM3 * (1 + (input.drainedBulkingPercent ?? bulkingPercent) / 100), weightKg: settled.weightKg };
    const vehicle = vehicleOf(input.vehicle);
    const [wet, dry] = within('/vehicle', () => [loadsOf(dug.volumeM3, dug.weightKg, vehicle), loadsOf(loaded.volumeM3, loaded.weightKg, vehicle)] as const);
    return {
      dug: stageView(dug),
      drainedAsLoaded: stageView(loaded),
      drainage: figure(inPlace.volumeM3 - settled.volumeM3, 'gal'),
      wetLoads: loadsView(wet),
      drainedLoads: loadsView(dry),
      working: { ...working, inputs: [...working.inputs, ...dry.working.inputs.slice(2)], steps: [...working.steps, ...labelled('wet', wet.working.steps), ...labelled('drained', dry.working.steps)] },
      warnings: [...warnings, 'Water that drains off sediment may count as waste water: lead it where the local rules allow.'],
    };
  },
});

function labelled<T extends { label: string }>(stage: string, steps: readonly T[]): T[] {
  return steps.map((one) => ({ ...one, label: `${one.label}, ${stage}` }));
}
